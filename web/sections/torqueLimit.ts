import { html } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { type GearboxStudy, gearName } from "../../sim/index.ts";
import { defineSection, type Table } from "./parts/section.ts";

/** How much torque may the controller let through? */
export default defineSection({
  name: "torqueLimit",
  title: "Torque limit",
  question: "How much torque may the controller let into the old gearbox, and what does a lower limit cost the driver?",
  given: (form) => html`
    ${form.fields("controller.torqueCap_Nm", "controller.ramp_s", "driveline.limits.gearboxInput_Nm")}
    ${form.fields("driveline.limits.propellerShaft_Nm", "driveline.limits.halfShaft_Nm")}
    ${form.fold(
      "More about the controller",
      form.fields(
        "controller.name",
        "controller.min_V",
        "controller.max_V",
        "controller.rollBackBelow_V",
        "controller.rollBackAbove_V",
        "controller.current_A",
        "controller.power_kW",
      ),
      ...["name", "min_V", "max_V", "rollBackBelow_V", "rollBackAbove_V", "current_A", "power_kW"].map(
        (key) => `controller.${key}`,
      ),
    )}
  `,
  fields: [
    "driveline.limits",
    ...[
      "torqueCap_Nm",
      "ramp_s",
      "name",
      "min_V",
      "max_V",
      "rollBackBelow_V",
      "rollBackAbove_V",
      "current_A",
      "power_kW",
    ].map((key) => `controller.${key}`),
  ],
  inputs: ["job", "gearbox", "units"],
  compute: ({ job, gearbox, units }) => {
    const words = gearbox.capWords.map((each) => messageIn(each, units));
    const set_Nm = job.controller.torqueCap_Nm;
    const recommended_Nm = gearbox.recommendedCap?.torque_Nm;
    return {
      caps: capTable(gearbox, units),
      shafts: shaftTable(gearbox, job.driveline.limits, units),
      words,
      // Said by itself, and not only among the rest.
      isOver:
        recommended_Nm !== undefined &&
        Math.min(set_Nm ?? Number.POSITIVE_INFINITY, gearbox.caps.at(-1)?.torque_Nm ?? 0) > recommended_Nm + 1,
      set: set_Nm === undefined ? "no cap set" : `capped at ${writeQuantity("torque", set_Nm, units)}`,
      recommended: recommended_Nm === undefined ? undefined : writeQuantity("torque", recommended_Nm, units),
    };
  },
  plot: ({ caps, shafts }) => [caps, shafts],
  sentence: ({ words }) => words.join(" "),
  summary: ({ set, recommended }) =>
    recommended === undefined ? `${set}; what the gearbox takes is not known` : `${set}; ${recommended} recommended`,
  attention: ({ isOver, set, recommended }) =>
    isOver ? [`Too much torque for the old parts: ${set}, ${recommended} recommended.`] : [],
});

function capTable({ caps, pack, demand, recommendedCap }: GearboxStudy, units: UnitHabit): Table {
  const seconds = (value_s: number | undefined) => (value_s === undefined ? "not reached" : `${value_s.toFixed(1)} s`);
  const speed = (value_kmh: number) => writeQuantity("speed", value_kmh, units);
  const hill = demand.hill_ratio === undefined ? undefined : writeQuantity("gradient", demand.hill_ratio, units, 3);
  return {
    caption: `What each torque cap does, with ${pack}, in the gears used`,
    columns: [
      { title: "Cap at the motor" },
      { title: `0 to ${speed(50)}` },
      { title: `0 to ${speed(100)}` },
      { title: `${speed(80)} to ${speed(100)}` },
      { title: "Behind on this road" },
      { title: "From the pack" },
      { title: "Starts on up to" },
      ...(hill === undefined ? [] : [{ title: `To spare on ${hill}` }]),
    ],
    rows: caps.map((row) => [
      `${writeQuantity("torque", row.torque_Nm, units)}${row.torque_Nm === recommendedCap?.torque_Nm ? ", recommended" : ""}`,
      seconds(row.to50kmh_s),
      seconds(row.to100kmh_s),
      seconds(row.from80to100kmh_s),
      row.behind_s < 0.5 ? "no" : `${Math.round(row.behind_s)} s`,
      row.battery_Whpkm === undefined ? "does not move" : writeQuantity("energyUse", row.battery_Whpkm, units),
      writeQuantity("gradient", row.steepestStart_ratio, units, 2),
      ...(row.hill
        ? [row.hill.starts ? writeQuantity("fraction", row.hill.spare_frac, units, 2) : "does not start"]
        : []),
    ]),
    note: "Times from rest with the torque ramp as set. Recommended: common practice, no source.",
  };
}

function shaftTable(
  { shafts }: GearboxStudy,
  limits: { readonly propellerShaft_Nm?: number | undefined; readonly halfShaft_Nm?: number | undefined },
  units: UnitHabit,
): Table {
  const torque = (value_Nm: number) => writeQuantity("torque", value_Nm, units);
  const [first] = shafts;
  const known = [
    ...(limits.propellerShaft_Nm === undefined ? [] : [`propeller shaft ${torque(limits.propellerShaft_Nm)}`]),
    ...(limits.halfShaft_Nm === undefined ? [] : [`each half-shaft ${torque(limits.halfShaft_Nm)}`]),
  ];
  return {
    caption: "Torque on the propeller shaft, and on each half-shaft, by gear",
    columns: [
      { title: "Gear" },
      ...shafts.map(({ name, torque_Nm }) => ({ title: `${capital(name)}: ${torque(torque_Nm)}` })),
    ],
    rows: first.gears.map((row, i) => [
      gearName(row),
      ...shafts.map(({ torque_Nm, gears }) => {
        const { propellerShaft_Nm, halfShaft_Nm, inputAtLimit_Nm, weakest } = gears[i];
        const isOver = inputAtLimit_Nm !== undefined && torque_Nm > inputAtLimit_Nm;
        return `${torque(propellerShaft_Nm)}; ${torque(halfShaft_Nm)}${isOver ? `: ${weakest} over` : ""}`;
      }),
    ]),
    note:
      known.length === 0
        ? "What the shafts take is not known; where the old engine put more, nothing new is asked of them."
        : `They take: ${known.join(", ")}.`,
  };
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
