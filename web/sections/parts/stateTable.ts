import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import type { GearboxStudy } from "../../../sim/index.ts";
import type { Table } from "./section.ts";

/** A part-time four-wheel drive with its hubs free, locked, and its front axle engaged. */
export function stateTable({ driveStates, pack }: GearboxStudy, units: UnitHabit): Table {
  return {
    caption: `Hubs and front axle on this road, with ${pack}`,
    columns: [
      { title: "Levers and hubs" },
      { title: "Drives, and brakes by the motor", isText: true },
      { title: "Drag of the front shafts" },
      { title: "From the pack" },
    ],
    rows: driveStates.map(({ name, isAsSet, drivenAxle, shaftDrag_Nm, battery_Whpkm }) => [
      isAsSet ? `${name}, as set` : name,
      drivenAxle === "both" ? "both axles" : `${drivenAxle} axle`,
      shaftDrag_Nm === 0 ? "none" : writeQuantity("torque", shaftDrag_Nm, units),
      battery_Whpkm === undefined ? "does not move" : writeQuantity("energyUse", battery_Whpkm, units),
    ]),
    note: "Low range is in the table by gear and, for the shafts, under Torque limit.",
  };
}

/** An open car with its hood up and down. */
export function hoodTable({ hoodStates, pack }: GearboxStudy, units: UnitHabit): Table {
  return {
    caption: `Hood up and down on this road, with ${pack}`,
    columns: [{ title: "The hood" }, { title: "From the pack" }],
    rows: hoodStates.map(({ name, isAsSet, battery_Whpkm }) => [
      isAsSet ? `${name}, as set` : name,
      battery_Whpkm === undefined ? "does not move" : writeQuantity("energyUse", battery_Whpkm, units),
    ]),
    note: "How much more drag the hood makes down is typed under Drag.",
  };
}
