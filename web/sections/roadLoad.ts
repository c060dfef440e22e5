import { html } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import { fuelCheck, fuelCheckWords, type SteadyRow } from "../../sim/index.ts";
import { roadLoad } from "../charts/roadLoad.ts";
import { steadySpeed } from "../charts/steadySpeed.ts";
import { airForm } from "../forms/car/airForm.ts";
import { bodyPicker, tyrePicker } from "../forms/car/bodyPicker.ts";
import { coastDownForm } from "../forms/car/coastDownForm.ts";
import { hoodForm } from "../forms/car/hoodForm.ts";
import { roadLoadChoice } from "../forms/car/roadLoadChoice.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { defineSection } from "./parts/section.ts";
import { familiarRow, familiarSpeed_kmh } from "./parts/steadySpeeds.ts";
import type { Values } from "./parts/values.ts";

/** What does it cost to hold a steady speed on the level? */
export default defineSection({
  name: "roadLoad",
  title: "Drag",
  question: "What does it cost to hold a steady speed on a level road?",
  given: (form) => html`
    ${form.fields(packChoice(form, "view-pack-load"))}
    ${roadLoadChoice(form)} ${bodyPicker(form)}
    ${form.fields("vehicle.tyres.loadedRadius_mm", "vehicle.tyres.rolling_coeff")} ${tyrePicker(form)}
    ${form.fold("An open car: its hood up and down", hoodForm(form), "vehicle.hood")}
    ${form.fold("Measure it: a coast-down by stopwatch", coastDownForm(form))}
    ${form.fold(
      "More about the tyres",
      form.fields(
        "vehicle.tyres.name",
        "vehicle.tyres.rollingRise_coeff",
        "vehicle.tyres.wheelsInertia_kgm2",
        "vehicle.tyres.followsTemperature",
      ),
      "vehicle.tyres.name",
      "vehicle.tyres.rollingRise_coeff",
      "vehicle.tyres.wheelsInertia_kgm2",
    )}
    ${form.fold("The air, the weather and the surface", airForm(form), "environment")}
  `,
  fields: ["vehicle.roadLoad", "vehicle.hood", "vehicle.tyres", "environment"],
  explains: ["rolling_N", "steady_Whpkm"],
  inputs: ["job", "steady", "runs", "packIndex", "units"],
  compute: ({ job, steady, runs, packIndex, units }) => ({
    byFuel: fuelWords(job, runs.candidates[packIndex].wheelPositive_Whpkm, units),
    pack: runs.candidates[packIndex].name,
    chosen: packIndex,
    units,
    familiar: writeQuantity("speed", familiarSpeed_kmh(units), units),
    packs: steady.map((rows, index) => ({ name: runs.candidates[index]?.name ?? "", index, rows })),
    rows: (steady[packIndex] ?? []).map((row) => ({
      ...row,
      speed: writeQuantity("speed", row.speed_kmh, units),
      use: writeQuantity("energyUse", row.battery_Whpkm, units),
      range: `${row.isAtLeast ? "at least " : ""}${writeQuantity("distance", row.range_km ?? Number.NaN, units)}`,
      notHeld: row.isHeld ? "" : notHeld(row, units),
      rotation: writeQuantity("rotation", row.motor_rpm, units),
      torque: writeQuantity("torque", row.motor_Nm, units),
      efficiency: writeQuantity("fraction", row.efficiency_frac, units, 2),
    })),
  }),
  plot: ({ rows, packs, pack, chosen, familiar }, drawing) => [
    {
      caption: `Steady speeds on a level road, with ${pack}`,
      columns: "Speed,Energy at the pack,Range,Motor turns,Motor torque,Motor and controller"
        .split(",")
        .map((title) => ({ title })),
      rows: rows.map((row) =>
        row.isHeld
          ? [row.speed, row.use, row.range, row.rotation, row.torque, row.efficiency]
          : [row.speed, row.notHeld, "", "", "", ""],
      ),
      note: `Check these first: if the figure at ${familiar} is not what you expect of such a car, something above is wrong.`,
    },
    {
      name: "forces",
      caption: `What holds the car back on a level road? The forces on it, with ${pack} aboard`,
      chart: roadLoad(
        rows.map(({ speed_kmh, rolling_N, aero_N, drag_N }) => ({
          speed_mps: speed_kmh * MPS_PER_KMH,
          rolling_N,
          aero_N,
          ...(drag_N > 0 && { drag_N }),
        })),
        drawing,
      ),
    },
    {
      name: "steady",
      caption: "How far does each pack go at a steady speed? Energy and range, pack by pack",
      chart: steadySpeed(packs, { ...drawing, chosen }),
    },
  ],
  sentence: ({ rows, pack, byFuel, units }) => {
    const middle = familiarRow(rows, units);
    const steady = middle
      ? `At a steady ${middle.speed} it takes ${middle.use} from the pack and would go ${middle.range} with ${pack}.`
      : "The car holds none of these speeds on the level.";
    return [steady, ...byFuel].join(" ");
  },
  summary: ({ rows, pack, units }) => {
    const middle = familiarRow(rows, units);
    return middle ? `${middle.use} at a steady ${middle.speed} with ${pack}` : `no steady speed is held with ${pack}`;
  },
  attention: ({ rows }) =>
    rows
      .filter(({ isHeld, speed_kmh }) => !isHeld && speed_kmh <= 80)
      .map(({ speed, notHeld }) => `${speed}: ${notHeld}.`),
});

/** The road's energy at the wheels beside what the client's fuel record says of it; nothing without a record. */
function fuelWords(job: Values["job"], road_Whpkm: number, units: UnitHabit): string[] {
  const check = fuelCheck(job, road_Whpkm);
  return check ? [messageIn(fuelCheckWords(check), units)] : [];
}

const limitWords: Readonly<Record<SteadyRow["limit"], string>> = {
  none: "nothing in particular",
  grip: "the tyres have no more grip",
  driveline: "the driveline takes no more torque",
  motor: "the motor gives no more",
  controller: "the controller gives no more",
  pack: "the pack gives no more",
  heat: "motor or pack too hot",
};

/** That a speed is not held, or for how long, why, and what is. */
function notHeld({ heldFor_s = 0, heldAlways_kmh = 0, limit }: SteadyRow, units: UnitHabit): string {
  const minutes = Math.round(heldFor_s / 60);
  const while_min = heldFor_s < 30 ? "" : ` for more than ${minutes < 1 ? "a few seconds" : `${minutes} min`}`;
  const instead =
    heldAlways_kmh > 0 ? `; ${writeQuantity("speed", heldAlways_kmh, units)} is held until the pack is empty` : "";
  return `not held${while_min}: ${limitWords[limit]}${instead}`;
}
