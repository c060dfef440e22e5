import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import type { Candidate } from "../driveReport.ts";
import type { Unknown } from "../unknowns.ts";
import { type Band, bandOf, type Ends, shifted } from "./band.ts";
import { type ByCondition, byCondition, type ConditionId, rangeFactor } from "./conditions.ts";
import { type Limits, type Stop, stopOf } from "./stops.ts";

/** Share of the road that a car may miss and still be said to drive it. */
const MISSED_frac = 0.02;
/** Findings that say which of the client's other wishes the car does not meet. */
const UNMET = ["hillTooSteep", "tooSlow"];
/** Findings that say why a car does not drive the road, the plainest first. */
const WHY_NOT = ["doesNotStart", "stopsOnRoad", "noRange", "stuck", "traceNotFollowed"];

/** What the answer asks of a job beside its drives. */
export type Use = Pick<Job, "usualDay_km" | "longestDay_km" | "longestDaysAYear" | "allowance"> & Limits;

/** The verdict on a pack, the worst first. */
export const VERDICTS = ["not enough", "only just", "enough", "more than enough"] as const;
export type Verdict = (typeof VERDICTS)[number];

/** What is known of one pack for the use it is asked for. */
export interface PackAnswer {
  readonly name: string;
  /** The pack with its boxes, and the car as driven with it. */
  readonly mass_kg: number;
  readonly testMass_kg: number;
  readonly usable_kWh: number;
  /** Why it may not be used; it then has no verdict and no kilometres. */
  readonly stop?: Stop;
  /** Why the car with it does not drive this road; it then has no kilometres, or they hold for a road driven more slowly. */
  readonly cannot?: Message;
  /** What else is asked of the car and it does not do with this pack: start on the client's hill, reach his top speed. */
  readonly unmet: readonly Message[];
  /** Absent for a stop, and while the band is not known and would decide. */
  readonly verdict?: Verdict;
  readonly range?: ByCondition<Band>;
  /** Kilometres left on coming home from the usual day and from the longest; below nought it does not get home. */
  readonly left?: ByCondition<Band>;
  readonly longest?: ByCondition<Band>;
  /** The range goes on beyond what was driven (24 h). */
  readonly isAtLeast: boolean;
  /** Values at which the car would not drive the road at all, though it does with the values as taken. */
  readonly mayFail: readonly { readonly path: string; readonly value: number }[];
}

/** A pack's kilometres and what stands against it. The verdict is given where all packs are known: see `verdicts`. */
export function packAnswer(
  use: Use,
  packIndex: number,
  candidate: Candidate,
  unknowns: readonly Unknown[] | undefined,
): Omit<PackAnswer, "verdict"> {
  const { name, pack, testMass_kg, range_km } = candidate;
  const unmet = candidate.findings.filter(({ kind }) => UNMET.includes(kind)).map(({ sentence }) => sentence);
  const { mass_kg, usable_kWh } = pack;
  const base = { name, mass_kg, testMass_kg, usable_kWh, isAtLeast: false, unmet, mayFail: [] };
  const stop = stopOf(use, packIndex, candidate);
  if (stop) return { ...base, stop };
  const not = whyNot(candidate);
  if (not && !not.hasRange) return { ...base, cannot: not.why };
  const range = byCondition((condition) =>
    bandOf(
      range_km * rangeFactor(condition, use.allowance),
      unknowns ? [...endsIn(condition, use, candidate, unknowns), ...roadEnds(condition, use, candidate)] : [],
    ),
  );
  const { longestDay_km } = use;
  return {
    ...base,
    ...(not && { cannot: not.why }),
    range,
    left: byCondition((condition) => shifted(range[condition], -use.usualDay_km)),
    ...(longestDay_km !== undefined && {
      longest: byCondition((condition) => shifted(range[condition], -longestDay_km)),
    }),
    isAtLeast: candidate.rangeEnd === "time",
    mayFail: (unknowns ?? []).flatMap(({ path, low, high, failsAtLow, failsAtHigh }) => [
      ...(failsAtLow ? [{ path, value: low }] : []),
      ...(failsAtHigh ? [{ path, value: high }] : []),
    ]),
  };
}

/**
 * The range in a condition at either end of each unknown. An end at which the car does not drive the road is no distance: it is counted
 * apart, as something that may fail.
 */
export function endsIn(
  condition: ConditionId,
  { allowance }: Pick<Use, "allowance">,
  { range_km }: Pick<Candidate, "range_km">,
  unknowns: readonly Unknown[],
): Ends[] {
  return unknowns.map((unknown) => {
    const at = (end_km: number, value: number, fails: boolean) => {
      const factor = rangeFactor(condition, allowanceWith(allowance, unknown.path, value));
      return (fails ? range_km : end_km) * factor;
    };
    return {
      atLow: at(unknown.atLow_km, unknown.low, unknown.failsAtLow),
      atHigh: at(unknown.atHigh_km, unknown.high, unknown.failsAtHigh),
    };
  });
}

/**
 * The range in a condition at either end of what the log behind the road leaves open of its energy at the wheel, one more unknown beside the
 * car's own. The range is taken to go as one over that energy: accessories soften it and what is braked back sharpens it.
 */
export function roadEnds(
  condition: ConditionId,
  { allowance }: Pick<Use, "allowance">,
  { range_km, roadEnergy_ratio }: Pick<Candidate, "range_km" | "roadEnergy_ratio">,
): Ends[] {
  if (!roadEnergy_ratio) return [];
  const km = range_km * rangeFactor(condition, allowance);
  return [{ atLow: km / roadEnergy_ratio.low, atHigh: km / roadEnergy_ratio.high }];
}

function allowanceWith(allowance: Use["allowance"], path: string, value: number): Use["allowance"] {
  if (path === "allowance.winter_ratio") return { ...allowance, winter_ratio: value };
  return path === "allowance.aged_frac" ? { ...allowance, aged_frac: value } : allowance;
}

/**
 * Why the car does not drive this road, or nothing where it keeps up well enough. It has a range all the same where it only falls behind,
 * or where it is later in the day that it no longer covers half of the road.
 */
export function whyNot(candidate: Candidate): { readonly why: Message; readonly hasRange: boolean } | undefined {
  const { findings, missed_km, distance_km, reachedFloor, rangeEnd, stands } = candidate;
  const isTooSlow = rangeEnd === "stuck" && distance_km < missed_km;
  if (stands || isTooSlow || rangeEnd === "endless") {
    const found = WHY_NOT.map((kind) => findings.find((finding) => finding.kind === kind)).find((one) => one);
    return { why: found?.sentence ?? message`The car does not drive this road.`, hasRange: false };
  }
  const asked_km = distance_km + missed_km;
  if (asked_km === 0 || reachedFloor || missed_km / asked_km <= MISSED_frac) return undefined;
  const missed = q("fraction", missed_km / asked_km);
  return { why: message`The car does not keep up with this road: ${missed} of it is missed.`, hasRange: true };
}
