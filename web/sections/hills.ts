import { html } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { MPS_PER_KMH } from "../../shared/units.ts";
import { type GearboxStudy, gearName, notStarting, surfaces } from "../../sim/index.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { defineSection, type Table } from "./parts/section.ts";

type Hill = NonNullable<GearboxStudy["hill"]>;

/** Does the car start and climb on its steepest hill? */
export default defineSection({
  name: "hills",
  title: "Hills",
  question: "Does it start on its steepest hill, hold it to the top, and do the tyres grip?",
  given: (form) => html`
    ${form.fields(packChoice(form, "view-pack-hills"))}
    ${form.fields("requirement.startHill_ratio", "requirement.hillLength_km")}
  `,
  fields: ["requirement.startHill_ratio", "requirement.hillLength_km"],
  inputs: ["job", "gearbox", "units"],
  compute: ({ job, gearbox: { hill, pack }, units }) => {
    if (!hill) return undefined;
    const { asked, verdict, words } = hill;
    const slope = writeQuantity("gradient", asked.grade_ratio, units, 3);
    const mass = writeQuantity("mass", verdict.mass_kg, units);
    const starting = verdict.rows.filter(({ spare_frac }) => spare_frac >= 0);
    const stuck = notStarting(job, verdict);
    const isOne = job.driveline.shifting.kind === "fixed";
    return {
      words: words.map((each) => messageIn(each, units)),
      byGear: gearTable(hill, `What ${slope} asks in each gear, with ${pack}, ${mass} in all`, units),
      grip: gripTable(hill, slope),
      slope,
      starts: starting.map(gearName),
      usedNot: stuck && `${gearName(stuck)}, the ${isOne ? "" : "lowest "}gear used`,
      from: asked.from,
    };
  },
  plot: (found) => (found ? [found.byGear, ...(found.grip ? [found.grip] : [])] : []),
  sentence: (found) =>
    found
      ? `${found.from === "road" ? "This is the steepest stretch of the road; no other hill is asked for. " : ""}${found.words.join(" ")}`
      : "The road is level and no hill is asked for: type the steepest one the car must start on.",
  summary: (found) => {
    if (!found) return "no hill is known";
    if (found.starts.length === 0) return `does not start on ${found.slope}`;
    const starts = `starts on ${found.slope} in ${found.starts.join(", ")}`;
    return found.usedNot === undefined ? starts : `does not start in ${found.usedNot}; ${starts}`;
  },
  attention: (found) => {
    if (!found) return [];
    if (found.starts.length === 0) return [`The car does not start on ${found.slope}.`];
    return found.usedNot === undefined ? [] : [`The car does not start on ${found.slope} in ${found.usedNot}.`];
  },
  caution:
    "Try a hill start on an easy slope first, with room behind. A direct drive without a clutch rolls back when the motor gives nothing: the handbrake must hold the car fully laden.",
});

function gearTable({ verdict }: Hill, caption: string, units: UnitHabit): Table {
  const q = (kind: Parameters<typeof writeQuantity>[0], value: number, digits?: number) =>
    writeQuantity(kind, value, units, digits);
  return {
    caption,
    columns: "Gear,Needs to start,Has,To spare,Bound by,Starts on up to,Climbs at,Power,Lasting,Motor at the top"
      .split(",")
      .map((title) => ({ title, ...(title === "Bound by" && { isText: true }) })),
    rows: verdict.rows.map((row) => {
      const { climb } = row;
      const slows = climb.slowsAfter_m !== undefined;
      return [
        gearName(row),
        q("torque", row.needed_Nm),
        q("torque", row.available_Nm),
        row.spare_frac >= 0 ? q("fraction", row.spare_frac, 2) : "does not start",
        row.limit,
        row.steepest_ratio > 0 ? q("gradient", row.steepest_ratio, 2) : "none",
        slows ? "not held" : q("speed", climb.speed_mps / MPS_PER_KMH, 2),
        slows ? "-" : q("power", climb.shaft_kW),
        slows ? "-" : q("duration", climb.duration_s, 2),
        slows || climb.motorTop_degC === undefined ? "-" : q("temperature", Math.round(climb.motorTop_degC)),
      ];
    }),
    note: "A fifth of torque to spare is wanted: common practice, no source.",
  };
}

function gripTable({ verdict: { grip, drivenAxle } }: Hill, slope: string): Table | undefined {
  if (grip.length === 0) return undefined;
  return {
    caption: `Friction that the driven tyres need to start on ${slope}, and what is left of it`,
    columns: [
      { title: "Driven" },
      { title: "Needs a friction coefficient of" },
      ...surfaces.map(({ name, grip_coeff }) => ({ title: `${name}, ${grip_coeff}` })),
    ],
    rows: grip.map((row) => [
      `${row.drivenAxle === "both" ? "both axles" : `${row.drivenAxle} axle`}${row.drivenAxle === drivenAxle ? ", as set" : ""}`,
      Number.isFinite(row.needed_coeff) && row.needed_coeff > 0
        ? `${row.needed_coeff.toFixed(2)} of grip`
        : "more than there is",
      ...surfaces.map(({ name }) =>
        row.reserve_frac[name] < 0 ? "slips" : `${Math.round(100 * row.reserve_frac[name])} % to spare`,
      ),
    ]),
    note: "Dry 0.8, wet 0.5, loose 0.3 (gravel or wet grass): common practice, no source. The slope moves weight to the rear axle.",
  };
}
