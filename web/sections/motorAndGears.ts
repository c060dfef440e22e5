import { html } from "lit-html";
import { transferBox_ratio } from "../../shared/job/transferBoxRatio.ts";
import { formatNumber } from "../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { MM_PER_M, MPS_PER_KMH, RADPS_PER_RPM } from "../../shared/units.ts";
import { gearSpeeds } from "../charts/gearSpeeds.ts";
import { gearboxForm, gearboxPaths } from "../forms/motor/gearboxForm.ts";
import { shiftingChoice } from "../forms/motor/shiftingChoice.ts";
import { findingsOf } from "./parts/findingsOf.ts";
import { gearTables } from "./parts/gearTable.ts";
import { defineSection } from "./parts/section.ts";
import { hoodTable, stateTable } from "./parts/stateTable.ts";
import { steadySpeeds_kmh } from "./parts/steadySpeeds.ts";

/** How fast does the motor turn in each gear? */
export default defineSection({
  name: "motorAndGears",
  title: "Gears",
  question: "How fast does the motor turn in each gear, and which gears are used?",
  given: (form) => {
    const { driveline } = form.job;
    return html`
      ${form.fields(
        "driveline.finalDrive_ratio",
        ...driveline.gears.map(({ name }, i) => form.field(`driveline.gears.${i}.gear_ratio`, `Ratio of ${name}`)),
      )}
      ${shiftingChoice(form)}
      ${form.fields("requirement.topSpeed_kmh")}
      ${form.fold("More about the gearbox and axle", gearboxForm(form), ...gearboxPaths(form))}
    `;
  },
  fields: ["driveline", "requirement.topSpeed_kmh"],
  explains: ["gearSpeed_kmh"],
  inputs: ["job", "runs", "gearbox", "units"],
  compute: ({ job, runs, gearbox, units }) => {
    const { gears, finalDrive_ratio, shifting } = job.driveline;
    const box_ratio = transferBox_ratio(job.driveline);
    const radius_m = job.vehicle.tyres.loadedRadius_mm / MM_PER_M;
    const { maxSpeed_rpm } = job.motor;
    // One turn of the wheel carries the car 2 pi r, so a km/h is this many rpm of the wheel.
    const wheelPerKmh_rpm = MPS_PER_KMH / radius_m / RADPS_PER_RPM;
    const steady_kmh = steadySpeeds_kmh(units);
    const used = shifting.kind === "fixed" ? [shifting.gear] : shifting.gears;
    const rows = gears.map(({ name, gear_ratio }) => {
      const overall_ratio = gear_ratio * box_ratio * finalDrive_ratio;
      const top_kmh = maxSpeed_rpm / (wheelPerKmh_rpm * overall_ratio);
      return {
        gear: name,
        name: used.includes(name) ? `${name}, used` : name,
        isUsed: used.includes(name),
        overall_ratio,
        top_kmh,
        top: writeQuantity("speed", top_kmh, units),
        turns: steady_kmh.map((speed_kmh) => {
          const rotation_rpm = speed_kmh * wheelPerKmh_rpm * overall_ratio;
          return rotation_rpm > maxSpeed_rpm ? "too fast" : formatNumber(rotation_rpm);
        }),
      };
    });
    const fastest = rows.filter(({ isUsed }) => isUsed).toSorted((a, b) => b.top_kmh - a.top_kmh)[0];
    return {
      gearTables: gearTables(gearbox, job.requirement.startHill_ratio !== undefined, units),
      states: [
        ...(gearbox.driveStates.length > 0 ? [stateTable(gearbox, units)] : []),
        ...(gearbox.hoodStates.length > 0 ? [hoodTable(gearbox, units)] : []),
      ],
      others: gearbox.gearAdvice.others.map(({ gear, why }) => [gear, `${messageIn(why, units)}.`]),
      advice: [
        gearbox.gearAdvice.head,
        ...(gearbox.changing?.words ? [gearbox.changing.words] : []),
        ...(gearbox.hubWords ? [gearbox.hubWords] : []),
        ...(gearbox.hoodWords ? [gearbox.hoodWords] : []),
      ]
        .map((each) => messageIn(each, units))
        .join(" "),
      rows,
      speeds: steady_kmh.map((speed_kmh) => writeQuantity("speed", speed_kmh, units)),
      highest_rpm: Math.max(...runs.candidates.map(({ peak }) => peak.motor_rpm)),
      maxSpeed_rpm,
      units,
      used,
      fastest,
      tooFast: findingsOf(runs.candidates, ["motorPastTopSpeed"], units),
      roadTop_mps: runs.trace.max_kmh * MPS_PER_KMH,
      curves: rows.map(({ gear, isUsed, top_kmh }) => ({
        name: gear,
        isUsed,
        speedPerRpm_mps: (top_kmh * MPS_PER_KMH) / maxSpeed_rpm,
      })),
    };
  },
  plot: ({ gearTables: tables, others, states, rows, speeds, curves, maxSpeed_rpm, roadTop_mps }, drawing) => [
    ...tables,
    ...(others.length === 0
      ? []
      : [
          {
            caption: "Why not the other gears",
            columns: [{ title: "Gear" }, { title: "Why it is not the one to live in", isText: true }],
            rows: others,
          },
        ]),
    ...states,
    {
      caption:
        "Which gears serve this road? Road speeds of each gear up to the motor's top speed, those in use in colour",
      chart: gearSpeeds({ gears: curves, maxSpeed_rpm, roadTop_mps }, drawing),
    },
    {
      caption: "Motor speed (rpm) by gear and road speed",
      columns: [
        { title: "Gear" },
        { title: "Overall ratio" },
        ...speeds.map((title) => ({ title })),
        { title: "Top speed" },
      ],
      rows: rows.map(({ name, overall_ratio, turns, top }) => [name, overall_ratio.toPrecision(3), ...turns, top]),
      note: "Check against your gear chart.",
    },
  ],
  sentence: ({ advice, used, highest_rpm, maxSpeed_rpm, fastest, units }) => {
    const share = writeQuantity("fraction", highest_rpm / maxSpeed_rpm, units, 2);
    const highest = writeQuantity("rotation", highest_rpm, units);
    const gears =
      used.length === 1 ? `${used[0]} gear alone` : `${used.slice(0, -1).join(", ")} and ${used.at(-1)} gear`;
    return `${advice} In ${gears}, as set, the motor turns at ${highest} at most on this road, ${share} of its top speed. In ${fastest.gear} it would be at its top speed at ${fastest.top}.`;
  },
  summary: ({ used, highest_rpm, fastest, units }) =>
    `${used.join(", ")} used; ${writeQuantity("rotation", highest_rpm, units)} at most on this road; up to ${fastest.top}`,
  attention: ({ highest_rpm, maxSpeed_rpm, tooFast }) => {
    if (tooFast.length > 0) return tooFast;
    return highest_rpm > 0.9 * maxSpeed_rpm
      ? ["The motor turns above nine tenths of its top speed: for steady running choose a higher gear."]
      : [];
  },
});
