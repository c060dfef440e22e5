import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import type { Candidate } from "../driveReport.ts";
import type { RangeEnds, Unknown } from "../unknowns.ts";
import { overPlate, overPlateInShort } from "../weight/overPlate.ts";
import { type Band, bandOf, type Ends, shifted } from "./band.ts";
import {
  type ByCondition,
  byCondition,
  CONDITIONS,
  type ConditionId,
  conditionNames,
  rangeIn_km,
} from "./conditions.ts";
import { homeShare, type SampledRange, sampledBand } from "./sampledRange.ts";
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
  /** The client asked for this one. */
  readonly isAskedFor?: boolean;
  /** The pack with its boxes, and the car as driven with it. */
  readonly mass_kg: number;
  readonly testMass_kg: number;
  readonly usable_kWh: number;
  /** Why it may not be used; it then has no verdict and no kilometres. */
  readonly stop?: Stop;
  /** Laden it is over a plate: what, and that it may not be driven so. */
  readonly overPlate?: Message;
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
  /** Variants of what is not known that were driven at ten years in winter, and the share of them that get home from the usual day. */
  readonly sampled?: { readonly variants: number; readonly home_frac: number };
  /** The condition in which the car first does not drive this road, though it does today, and why. */
  readonly failsIn?: { readonly condition: ConditionId; readonly why: Message };
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
  sampled?: SampledRange,
): Omit<PackAnswer, "verdict"> {
  const { name, pack, testMass_kg } = candidate;
  const unmet = candidate.findings.filter(({ kind }) => UNMET.includes(kind)).map(({ sentence }) => sentence);
  const { mass_kg, usable_kWh } = pack;
  const asked = use.packs[packIndex]?.isAskedFor && { isAskedFor: true };
  const bare = { name, ...asked, mass_kg, testMass_kg, usable_kWh, isAtLeast: false, unmet, mayFail: [] };
  const stop = stopOf(use, packIndex, candidate);
  if (stop) return { ...bare, stop };
  const over = use.weights && overPlate(use.weights, name, mass_kg);
  const base = { ...bare, ...(over && { overPlate: overPlateInShort(over) }) };
  const not = whyNot(candidate);
  if (not && !not.hasRange) return { ...base, cannot: not.why };
  const bySingle = byCondition((condition) =>
    bandOf(
      rangeIn_km(condition, use.allowance, candidate),
      unknowns ? [...endsIn(condition, use, candidate, unknowns), ...roadEnds(condition, use, candidate)] : [],
    ),
  );
  const range: typeof bySingle = sampled
    ? { ...bySingle, tenYearsWinter: sampledBand(bySingle.tenYearsWinter.value, sampled) }
    : bySingle;
  const { longestDay_km } = use;
  const failing = failsIn(candidate);
  return {
    ...base,
    ...(not && { cannot: not.why }),
    range,
    ...(sampled && { sampled: { variants: sampled.ranges_km.length, home_frac: homeShare(sampled, use.usualDay_km) } }),
    left: byCondition((condition) => shifted(range[condition], -use.usualDay_km)),
    ...(longestDay_km !== undefined && {
      longest: byCondition((condition) => shifted(range[condition], -longestDay_km)),
    }),
    ...(failing && { failsIn: failing }),
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
  candidate: Pick<Candidate, "range_km" | "conditions">,
  unknowns: readonly Unknown[],
): Ends[] {
  const asTaken_km = rangeIn_km(condition, allowance, candidate);
  return unknowns.map((unknown) => {
    const driven = drivenEnds(condition, unknown, candidate);
    const byFactor = (end_km: number, value: number) =>
      rangeIn_km(condition, allowanceWith(allowance, unknown.path, value), { range_km: end_km });
    return {
      atLow: unknown.failsAtLow ? asTaken_km : (driven?.atLow_km ?? byFactor(unknown.atLow_km, unknown.low)),
      atHigh: unknown.failsAtHigh ? asTaken_km : (driven?.atHigh_km ?? byFactor(unknown.atHigh_km, unknown.high)),
    };
  });
}

/** What no pack hangs on while it is new. */
const OF_AGE = /^(allowance\.aged_frac|conditions\.old\.)/;

/**
 * The ranges of a driven winter at either end of an unknown. At ten years they were driven; a new pack in the same weather is taken to
 * gain and lose the same share of its range, and nothing by what age may make of it.
 */
function drivenEnds(
  condition: ConditionId,
  { path, tenYearsWinter: old }: Unknown,
  { conditions }: Pick<Candidate, "conditions">,
): RangeEnds | undefined {
  if (condition === "new" || !old) return undefined;
  if (condition === "tenYearsWinter") return old;
  const [winter_km, old_km] = [conditions?.winter?.range_km, conditions?.tenYearsWinter?.range_km];
  if (winter_km === undefined || !old_km) return undefined;
  const share = OF_AGE.test(path) ? 0 : winter_km / old_km;
  const moved = (end_km: number) => winter_km + share * (end_km - old_km);
  return { atLow_km: moved(old.atLow_km), atHigh_km: moved(old.atHigh_km) };
}

/**
 * The range in a condition at either end of what the log behind the road leaves open of its energy at the wheel, one more unknown beside the
 * car's own. The range is taken to go as one over that energy: accessories soften it and what is braked back sharpens it.
 */
export function roadEnds(
  condition: ConditionId,
  { allowance }: Pick<Use, "allowance">,
  candidate: Pick<Candidate, "range_km" | "conditions" | "roadEnergy_ratio">,
): Ends[] {
  const { roadEnergy_ratio } = candidate;
  if (!roadEnergy_ratio) return [];
  const km = rangeIn_km(condition, allowance, candidate);
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

/** The first condition in which a car that drives its road today stands on it, or misses more of it than a driver lets pass. */
function failsIn({ conditions }: Pick<Candidate, "conditions">): PackAnswer["failsIn"] {
  for (const condition of CONDITIONS) {
    const drive = condition === "new" ? undefined : conditions?.[condition];
    if (!drive) continue;
    const name = conditionNames[condition];
    if (drive.isStuck)
      return { condition, why: message`In the condition “${name}” the car comes to a stand on this road.` };
    if (drive.missed_frac > MISSED_frac) {
      const missed = q("fraction", drive.missed_frac);
      return {
        condition,
        why: message`In the condition “${name}” the car does not keep up with this road: ${missed} of it is missed.`,
      };
    }
  }
  return undefined;
}
