import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import type { HeatCourse, HeatStudy } from "./heatStudy.ts";

/** Held back for less than this is felt by nobody. Assumed. */
const FELT_s = 1;

/** What the hot day does, in sentences: the road, the long hill, what the maker's rating says of both, and what is not known. */
export function heatWords(job: Job, study: HeatStudy): Message[] {
  const { hot_degC } = study;
  return [
    ...study.courses.map((course) => {
      if (!isJudged(study, course))
        return message`The car does not climb the ${longHill(study)} in the gears used: what that would do to motor and pack is not known.`;
      return [
        ...(course.name === "road"
          ? message`On a day of ${q("temperature", hot_degC)} this road`
          : hillWords(study, course)),
        ...temperatureWords(job, course),
        ...heldWords(course),
      ];
    }),
    ...study.courses.flatMap((course) => (isJudged(study, course) ? ratingWords(job, course) : [])),
    ...unknownWords(job),
  ];
}

/** Where heat holds the car back, or more is asked than the maker rates: a sentence each, for whoever reads no further. */
export function heatFaults(job: Job, { courses, hot_degC }: HeatStudy): Message[] {
  return courses.flatMap((course) => {
    const where = course.name === "road" ? "on this road" : "on the long hill";
    const found: Message[] = [];
    if (course.heldBack_s >= FELT_s)
      found.push(
        message`Heat holds the car back ${where} on a day of ${q("temperature", hot_degC)}, for ${q("duration", course.heldBack_s, 2)}.`,
      );
    const { rating } = job.motor;
    if (rating && isOver(course))
      found.push(message`The motor gives more ${where} than its maker’s continuous rating.`);
    return found;
  });
}

/** Of a hill that the car does not climb for other reasons than heat, temperatures say nothing. */
function isJudged({ isClimbed }: HeatStudy, { name, heldBack_s }: HeatCourse): boolean {
  return name === "road" || isClimbed || heldBack_s >= FELT_s;
}

/** `long hill, 8 km at 6 %,` and whether it is assumed. */
function longHill({ hill }: HeatStudy): Message {
  const assumed = hill.isAssumed ? " (assumed: name the client's own)" : "";
  return message`long hill, ${q("distance", hill.length_km)} at ${q("gradient", hill.grade_ratio, 2)}${assumed},`;
}

function hillWords(study: HeatStudy, { times, isEmpty }: HeatCourse): Message {
  const often = isEmpty ? message`until the pack is empty, the ${ordinal(times)} time` : message`${times} times`;
  return message`The ${longHill(study)} up at ${q("speed", study.hill.speed_kmh)} and down again ${often},`;
}

/** How hot the parts get; from where on they give less is said with the first course alone. */
function temperatureWords({ motor, module }: Job, { name, motor_degC, pack_degC }: HeatCourse): Message {
  const part = (what: string, hottest_degC: number, from_degC: number) => {
    const hottest = message`${what} to ${q("temperature", Math.round(hottest_degC))}`;
    return name === "road" ? message`${hottest}, which gives less from ${q("temperature", from_degC)} on` : hottest;
  };
  const parts = [
    ...(motor.heat && motor_degC !== undefined ? [part("the motor", motor_degC, motor.heat.derateFrom_degC)] : []),
    ...(module.heat && pack_degC !== undefined ? [part("the pack", pack_degC, module.heat.derateFrom_degC)] : []),
  ];
  if (parts.length === 0) return message` heats nothing of which it is known how it warms`;
  return message` takes ${parts.flatMap((each, i) => (i === 0 ? each : [name === "road" ? "; " : " and ", ...each]))}`;
}

function heldWords({ heldBack_s, behind_s }: HeatCourse): Message {
  if (heldBack_s >= FELT_s) return message`: heat holds the car back for ${q("duration", heldBack_s, 2)}.`;
  const behind =
    behind_s >= FELT_s
      ? message` It falls behind for ${q("duration", behind_s, 2)}, for other reasons than heat.`
      : message``;
  return message`: heat does not hold the car back.${behind}`;
}

function isOver({ continuousRating, peakRating }: HeatCourse): boolean {
  return continuousRating === "tooMuch" || continuousRating === "tooLong" || peakRating === "tooMuch";
}

function ratingWords({ motor: { rating } }: Job, course: HeatCourse): Message[] {
  if (rating === undefined) return [];
  const where = course.name === "road" ? "On the road" : "On the long hill";
  const half = message`${where} its hardest half hour asks ${q("power", course.continuous_kW)} of the motor, rated by its maker at ${q("power", rating.continuous_kW)} continuous`;
  const verdict = course.continuousRating === "holds" ? message`: within it` : message`: more than that`;
  if (course.peak_kW === undefined || rating.peak_kW === undefined || rating.peak_s === undefined)
    return [message`${half}${verdict}.`];
  const peak = message`its hardest ${q("duration", rating.peak_s, 2)} ${q("power", course.peak_kW)} of ${q("power", rating.peak_kW)}`;
  const peakVerdict = course.peakRating === "tooMuch" ? message`: more than that` : message`: within it`;
  return [message`${half}${verdict}; ${peak}${peakVerdict}.`];
}

function unknownWords({ motor, module }: Job): Message[] {
  const wanted = [
    ...(motor.heat ? [] : ["how the motor warms"]),
    ...(module.heat ? [] : ["how the modules warm"]),
    ...(motor.rating ? [] : ["the maker's continuous power, and how long its peak may last"]),
  ];
  if (wanted.length === 0) return [];
  return [message`Not known: ${wanted.join("; ")}.`];
}

function ordinal(count: number): string {
  return ["first", "second", "third", "fourth", "fifth"][count - 1] ?? `${count}th`;
}
