import { html } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import type { GearboxStudy } from "../../sim/index.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { defineSection, type Table } from "./parts/section.ts";

/** How hard may the motor brake? */
export default defineSection({
  name: "regen",
  title: "Regenerative braking",
  question: "How hard may the motor brake, and what does that return?",
  given: (form) => html`
    ${form.fields(packChoice(form, "view-pack-regen"))}
    ${form.fields("controller.regen.isOn", "controller.regen.torque_Nm")}
    ${form.fold(
      "More about regenerative braking",
      form.fields(
        "controller.regen.current_A",
        "controller.regen.power_kW",
        "controller.regen.wheelForce_N",
        "controller.regen.fadeNone_kmh",
        "controller.regen.fadeFull_kmh",
      ),
      ...["current_A", "power_kW", "wheelForce_N", "fadeNone_kmh", "fadeFull_kmh"].map(
        (key) => `controller.regen.${key}`,
      ),
    )}
  `,
  fields: ["controller.regen"],
  inputs: ["job", "gearbox", "units"],
  compute: ({ job, gearbox, units }) => {
    const { isOn, torque_Nm } = job.controller.regen;
    const set = !isOn
      ? "off"
      : torque_Nm === undefined
        ? "on, no torque limit"
        : `limit ${writeQuantity("torque", torque_Nm, units)}`;
    const begin_Nm = gearbox.regenBegin_Nm;
    const share = gearbox.regen.find((row) => row.torque_Nm === begin_Nm)?.returned_frac;
    return {
      table: settingsTable(gearbox, units),
      words: gearbox.regenWords.map((each) => messageIn(each, units)),
      summary: `${set}${begin_Nm === undefined || share === undefined ? "" : `; begin with ${writeQuantity("torque", begin_Nm, units)}, which returns ${writeQuantity("fraction", share, units, 2)}`}`,
    };
  },
  plot: ({ table }) => [table],
  sentence: ({ words }) => words.join(" "),
  summary: ({ summary }) => summary,
  caution:
    "Braking by the motor on the rear axle of a light car can lock it in the wet: set it gently, try it in an empty yard, and keep the wheel brakes in full order. They must stop the car alone when the pack is full. Where the car has an anti-lock system, braking by the motor must be off while that works. When brake lamps must light is for the local rule.",
});

function settingsTable({ regen, pack, regenBegin_Nm }: GearboxStudy, units: UnitHabit): Table {
  const q = (kind: Parameters<typeof writeQuantity>[0], value: number, digits?: number) =>
    writeQuantity(kind, value, units, digits);
  const slowing = (value_mps2: number) => `${value_mps2.toFixed(1)} m/s2`;
  const hasGrip = regen.some(({ neededGrip_coeff }) => neededGrip_coeff !== undefined);
  return {
    caption: `What each limit of braking by the motor does on this road, with ${pack}`,
    columns: [
      { title: "Limit at the motor" },
      { title: "Returned" },
      { title: "From the pack" },
      { title: "Range" },
      { title: "Peak into the pack" },
      { title: "Pack takes" },
      { title: "Slows by" },
      { title: "Pack full" },
      { title: "Cells at freezing" },
      ...(hasGrip ? [{ title: "Driven axle needs" }] : []),
      { title: "Brake lamps", isText: true },
    ],
    rows: regen.map((row) => [
      `${row.torque_Nm === 0 ? "off" : q("torque", row.torque_Nm)}${row.torque_Nm === regenBegin_Nm ? ", to begin with" : ""}`,
      q("fraction", row.returned_frac, 2),
      q("energyUse", row.battery_Whpkm),
      q("distance", Math.round(row.range_km), 2),
      q("current", row.charge_A),
      q("current", row.chargeLimit_A),
      slowing(row.slowing_mps2),
      slowing(row.fullPack_mps2),
      slowing(row.coldPack_mps2),
      ...(hasGrip ? [row.neededGrip_coeff === undefined ? "-" : `${row.neededGrip_coeff.toFixed(2)} of grip`] : []),
      row.lamps,
    ]),
    note: `Returned: of what driving takes at the controller. Slowing with the foot off at ${q("speed", 50)} on the level, pack half full, full, and its cells at ${q("temperature", 0)}.`,
  };
}
