import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { operatingPoints } from "../charts/operatingPoints.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { findingsOf } from "./parts/findingsOf.ts";
import { defineSection } from "./parts/section.ts";

/** Where does the motor work on this road? */
export default defineSection({
  name: "operatingPoints",
  title: "Operating points",
  question: "Where in its range does the motor work on this road, and what does that cost?",
  given: (form) => form.fields(packChoice(form, "view-pack-points")),
  explains: ["peakBattery_A"],
  inputs: ["runs", "motorSurface", "packIndex", "units"],
  compute: ({ runs, motorSurface, packIndex, units }) => {
    const run = runs.candidates[packIndex] ?? runs.candidates[0];
    const held = Object.entries(run.limited_s).filter(([, time_s]) => time_s > 0);
    return {
      run,
      index: runs.candidates.indexOf(run),
      map: motorSurface,
      torque: writeQuantity("torque", run.peak.motor_Nm, units),
      power: writeQuantity("power", run.peak.motor_kW, units),
      loss: writeQuantity("energyUse", run.distance_km > 0 ? run.ledger_Wh.motor / run.distance_km : Number.NaN, units),
      held: held.map(([limit, time_s]) => ({ limit, time_s: Math.round(time_s) })),
      cannot: findingsOf([run], ["doesNotStart"], units),
      refused: findingsOf([run], ["regenRefusedFull", "regenRefusedCold"], units),
    };
  },
  plot: ({ run, index, map }, drawing) => {
    if (!run.channels) return [];
    const chart = operatingPoints({ name: run.name, index, channels: run.channels, map, contours: "loss" }, drawing);
    return [
      {
        caption: `Where does the motor work on this road, and what is lost there? Time by torque and speed over lines of equal loss, with ${run.name}`,
        chart,
      },
    ];
  },
  sentence: ({ run, torque, power, loss, held, cannot, refused }) => {
    if (cannot.length > 0) return cannot.join(" ");
    const limits = held.map(
      ({ limit, time_s }) => `the ${limitWords[limit] ?? limit} ${time_s < 1 ? "for a moment" : `for ${time_s} s`}`,
    );
    const most = `With ${run.name} the motor gives at most ${torque} and ${power}; motor and controller lose ${loss}.`;
    if (limits.length > 0) return [most, `It is held at a limit by ${limits.join(", ")}.`, ...refused].join(" ");
    return [most, ...(refused.length > 0 ? refused : ["Nothing holds it back."])].join(" ");
  },
  summary: ({ torque, power, held }) => {
    const limit_s = held.reduce((sum, { time_s }) => sum + time_s, 0);
    return `${power} and ${torque} at most; ${held.length === 0 ? "never at a limit" : `at a limit for ${limit_s < 1 ? "a moment" : `${limit_s} s`}`}`;
  },
});

const limitWords: Readonly<Record<string, string>> = {
  grip: "grip of the tyres",
  driveline: "limit of the gearbox and shafts",
  motor: "motor",
  controller: "controller",
  pack: "pack",
  heat: "heat of motor or pack",
};
