import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { roadLength } from "../findings/finding.ts";
import { SPARE_frac } from "../findings/requirementFindings.ts";
import { type GearChoice, gearName } from "../gears/oneGear.ts";
import { limitWords } from "../going/limitWords.ts";
import type { Climb, Hill } from "./climb.ts";
import type { HillRow, HillVerdict } from "./judgeHill.ts";
import { lowestUsed, notStarting } from "./lowestUsed.ts";

/** A reserve of friction below this is little. Common practice, no source. */
const RESERVE_frac = 0.2;

/** What a hill means for the car, in sentences: first whether it starts, then how it climbs, then whether the tyres hold. */
export function hillWords(job: Job, hill: Hill, verdict: HillVerdict): Message[] {
  const used = lowestUsed(job, verdict);
  const climb = used ? [climbWords(job, hill, used)] : [];
  return [startWords(job, hill, verdict), ...ladenWords(hill, verdict, used), ...climb, ...gripWords(hill, verdict)];
}

function startWords(job: Job, { grade_ratio }: Hill, verdict: HillVerdict): Message {
  const { rows: all } = verdict;
  const slope = q("gradient", grade_ratio, 3);
  const torque = ({ needed_Nm, available_Nm }: HillRow) =>
    message`needs ${q("torque", needed_Nm)}, has ${q("torque", available_Nm)}`;
  // Low range is for the rough: it is named only where high range does not do.
  const high = all.filter(({ range }) => range !== "low");
  const isLowNeeded = high.every(({ spare_frac }) => spare_frac < SPARE_frac);
  const rows = isLowNeeded ? all : high;
  const starting = rows.filter(({ spare_frac }) => spare_frac >= 0);
  const easy = starting.filter(({ spare_frac }) => spare_frac >= SPARE_frac);
  const best = rows.reduce((a, b) => (b.spare_frac > a.spare_frac ? b : a));
  if (starting.length === 0)
    return message`The car does not start on ${slope} in any gear: at best in ${gearName(best)}, which ${torque(best)}, as ${limitWords[best.limit]}.`;
  const tallest = (easy.length > 0 ? easy : starting).at(-1) ?? best;
  const not = rows.filter((row) => !starting.includes(row));
  const others = not.length === 0 ? message`` : message` It does not start in ${namesOf(not)}.`;
  // What the car as set can not do is said first.
  const stuck = notStarting(job, verdict);
  const isOne = job.driveline.shifting.kind === "fixed";
  const no = stuck
    ? message`In ${gearName(stuck)}, the ${isOne ? "" : "lowest "}gear used, the car does not start on ${slope}: it ${torque(stuck)}, as ${limitWords[stuck.limit]}. It`
    : message`The car`;
  if (easy.length === 0)
    return message`${no} only just starts on ${slope} in ${gearName(tallest)}, which ${torque(tallest)}; a fifth to spare is wanted.${others}`;
  return message`${no} starts on ${slope} in ${namesOf(easy)} with a fifth of torque to spare: ${gearName(tallest)} ${torque(tallest)}.${others}`;
}

/** The start fully laden in the gear that is used, and where it does not do it, which gears do. */
function ladenWords({ grade_ratio }: Hill, { laden }: HillVerdict, used: HillRow | undefined): Message[] {
  const row = laden?.rows.find(({ gear, range }) => gear === used?.gear && range === used?.range);
  if (laden === undefined || row === undefined) return [];
  const slope = q("gradient", grade_ratio, 3);
  const all = message`Fully laden, ${q("mass", laden.mass_kg)} in all,`;
  const torque = message`needs ${q("torque", row.needed_Nm)}, has ${q("torque", row.available_Nm)}`;
  if (row.spare_frac >= 0) {
    const spare = message`${gearName(row)} ${torque}, ${q("fraction", row.spare_frac, 2)} to spare`;
    return [message`${all} ${spare}${row.spare_frac < SPARE_frac ? ": a fifth is wanted" : ""}.`];
  }
  const others = laden.rows.filter(({ spare_frac }) => spare_frac >= 0);
  const does = others.length === 0 ? message`nor in any other gear` : message`but in ${namesOf(others)}`;
  return [
    message`${all} it does not start on ${slope} in ${gearName(row)}, which ${torque}, as ${limitWords[row.limit]}, ${does}.`,
  ];
}

/** The climb in the gear that is used. */
function climbWords(job: Job, hill: Hill, row: HillRow): Message {
  const { climb } = row;
  const slope = q("gradient", hill.grade_ratio, 3);
  const speed = q("speed", climb.speed_mps / MPS_PER_KMH);
  if (climb.slowsAfter_m !== undefined) {
    const after = roadLength(Math.max(1, Math.round(climb.slowsAfter_m)) / M_PER_KM);
    const isHot = (climb.motorTop_degC ?? 0) >= (job.motor.heat?.derateFrom_degC ?? Number.POSITIVE_INFINITY);
    const hot = isHot ? heatWords(job, climb) : message``;
    return message`In ${gearName(row)} it does not hold ${speed} on ${slope}: it falls behind after ${after}.${hot}`;
  }
  const length = roadLength(hill.length_m / M_PER_KM);
  const over = message`${length} at ${slope} in ${gearName(row)} at ${speed} is ${q("duration", climb.duration_s, 2)} at ${q("power", climb.shaft_kW)}`;
  return message`${over}${ratingWords(job, climb)}.${heatWords(job, climb)}`;
}

function ratingWords({ motor: { rating } }: Job, { rating: verdict }: Climb): Message {
  if (rating === undefined || verdict === undefined) return message``;
  const { continuous_kW, peak_kW, peak_s } = rating;
  const continuous = message`continuous is ${q("power", continuous_kW)}`;
  if (verdict === "holds") return message`; ${continuous}: within it`;
  if (peak_kW === undefined || peak_s === undefined) return message`; ${continuous}: more than its maker rates it for`;
  const short = message`${continuous}, and ${q("power", peak_kW)} for ${q("duration", peak_s, 2)}`;
  if (verdict === "holdsShort") return message`; ${short}: it holds, and is hot at the top`;
  return verdict === "tooLong" ? message`; ${short}: too long` : message`; ${short}: more than its maker rates it for`;
}

function heatWords({ motor: { heat } }: Job, { motorTop_degC }: Climb): Message {
  if (heat === undefined || motorTop_degC === undefined) return message``;
  const top = message` The motor is at about ${q("temperature", Math.round(motorTop_degC))} at the top`;
  const from = q("temperature", heat.derateFrom_degC);
  return motorTop_degC >= heat.derateFrom_degC
    ? message`${top}, and gives less from ${from} on.`
    : message`${top}; it gives less from ${from} on.`;
}

function gripWords(hill: Hill, { grip, drivenAxle }: HillVerdict): Message[] {
  const driven = grip.find((row) => row.drivenAxle === drivenAxle);
  if (!driven)
    return [
      message`Whether the tyres hold is not known: wheelbase, height of the centre of gravity and the share on the front axle are wanted.`,
    ];
  const slope = q("gradient", hill.grade_ratio, 3);
  const axle = drivenAxle === "both" ? "both axles" : `the ${drivenAxle} axle`;
  const needs = message`Driven by ${axle}, the tyres need a friction of ${driven.needed_coeff.toFixed(2)} to start on ${slope}`;
  const slips = Object.entries(driven.reserve_frac)
    .filter(([, reserve]) => reserve < 0)
    .map(([name]) => name);
  const little = Object.entries(driven.reserve_frac)
    .filter(([, reserve]) => reserve >= 0 && reserve < RESERVE_frac)
    .map(([name]) => name);
  if (slips.length === 0 && little.length === 0) return [message`${needs}: dry, wet and loose ground give more.`];
  const says = [
    ...(slips.length > 0 ? [`they slip when it is ${slips.join(" or ")}`] : []),
    ...(little.length > 0 ? [`there is little in reserve when it is ${little.join(" or ")}`] : []),
  ];
  const both = grip.find((row) => row.drivenAxle === "both");
  const helps =
    drivenAxle !== "both" && both && slips.some((name) => both.reserve_frac[name] >= 0)
      ? message` With both axles driven ${both.needed_coeff.toFixed(2)} would do.`
      : message``;
  return [message`${needs}: ${says.join(", and ")}.${helps}`];
}

function namesOf(rows: readonly GearChoice[]): string {
  const names = rows.map(gearName);
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
