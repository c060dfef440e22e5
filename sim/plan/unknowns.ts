import type { Job, Origin } from "../../shared/job/job.ts";
import { atPath, withPath } from "../../shared/job/path.ts";
import { M_PER_KM } from "../../shared/units.ts";
import type { Model } from "../step/model.ts";
import { type Prepared, prepare } from "../step/prepare.ts";
import { characteristics } from "../trace/characteristics.ts";
import type { Trace } from "../trace/trace.ts";
import { rangeOn } from "./going/range.ts";

/** How far a value may be off where its origin does not say. Assumed. */
export const USUAL_BAND_frac = 0.1;
/** What no range hangs on: the question itself, and what does not move the car. */
export const NO_RANGE = /^(usualDay|longestDay|engine|roads|charger|vehicle\.gross_kg)/;

/** The least that a band reaches down to, as a share of the value. */
const LEAST_frac = 0.01;

/** A value that nobody measured, and the band it may lie in. */
export interface OpenValue {
  /** Path in the job, such as `vehicle.tyres.rolling_coeff`. */
  readonly path: string;
  readonly from: Origin["from"];
  readonly value: number;
  readonly plusMinus_frac: number;
  readonly low: number;
  readonly high: number;
}

/** What one value that nobody measured does to the range of a pack, over the band it may lie in. */
export interface Unknown extends OpenValue {
  /** The range with every value as taken. */
  readonly asTaken_km: number;
  /** The range at either end of the band. */
  readonly atLow_km: number;
  readonly atHigh_km: number;
  /** The car does not drive the road at this end, though it does with the value as taken. */
  readonly failsAtLow: boolean;
  readonly failsAtHigh: boolean;
  /** The larger of the two distances from the range as taken. */
  readonly effect_km: number;
}

/**
 * The values of a job that are still usual, guessed or typed as a band, ordered by what they do to one pack's range on a road: each is put to the lower
 * and the upper end of its band while all others stay (one at a time: what two of them do together is not in it). Counts have no band;
 * a share stays at most 1. What is allowed for winter and age leaves the range of today as it is.
 * `isCancelled` is asked between values.
 */
export function unknownsByEffect(
  job: Job,
  packIndex: number,
  trace: Trace,
  isCancelled: () => boolean = () => false,
): Unknown[] {
  const taken: Prepared = { job, pack: job.packs[packIndex], model: prepare(job, job.packs[packIndex]) };
  const asTaken = drivenRange(taken.model, trace);
  const preparedAt = (path: string, end: number) => {
    const changed = withPath(job, path, end);
    return prepare(changed, changed.packs[packIndex], taken);
  };
  const found: Unknown[] = [];
  for (const open of openValues(job)) {
    if (isCancelled()) break;
    const { path, low, high } = open;
    const at = (end: number) => (path.startsWith("allowance.") ? asTaken : drivenRange(preparedAt(path, end), trace));
    const [atLow, atHigh] = [at(low), at(high)];
    found.push({
      ...open,
      asTaken_km: asTaken.range_km,
      atLow_km: atLow.range_km,
      atHigh_km: atHigh.range_km,
      failsAtLow: atLow.isStuck && !asTaken.isStuck,
      failsAtHigh: atHigh.isStuck && !asTaken.isStuck,
      effect_km: Math.max(...[atLow, atHigh].map(({ range_km }) => Math.abs(range_km - asTaken.range_km))),
    });
  }
  return found.sort((a, b) => b.effect_km - a.effect_km);
}

/**
 * The values of a job that are still usual, guessed or typed as a band, each with the ends of its band. A share stays at most 1, and a band
 * wider than the value itself ends at a hundredth of it: no mass, drag or capacity is nothing or less.
 */
export function openValues(job: Job): OpenValue[] {
  return Object.entries(job.origins).flatMap(([path, origin]) => {
    const value = atPath(job, path);
    if (!isOpen(origin) || typeof value !== "number" || value === 0) return [];
    if (NO_RANGE.test(path) || !isQuantity(path)) return [];
    const plusMinus_frac = origin.plusMinus_frac ?? USUAL_BAND_frac;
    const [low, high] = endsOf(path, value, plusMinus_frac);
    return [{ path, from: origin.from, value, plusMinus_frac, low, high }];
  });
}

/** A range, and whether the car comes to a stand before the road has been driven once. */
export function drivenRange(model: Model, trace: Trace) {
  const { distance_m, end } = rangeOn(model, trace);
  // Stuck on the way out or on the way home; one that is stuck later has driven the road.
  const isStuck = end === "stuck" && distance_m < 1.5 * characteristics(trace).distance_m;
  return { range_km: distance_m / M_PER_KM, isStuck };
}

/** Either end of a value's band, the lower first; a share stays at most 1. */
export function endsOf(path: string, value: number, plusMinus_frac: number): readonly [number, number] {
  const most = path.endsWith("_frac") ? 1 : Number.POSITIVE_INFINITY;
  const shares = [Math.max(LEAST_frac, 1 - plusMinus_frac), 1 + plusMinus_frac];
  const ends = shares.map((share) => Math.min(most, share * value));
  return [Math.min(...ends), Math.max(...ends)];
}

/** A quantity's key bears its unit, its items have an index behind that; what has no unit is a count. */
export function isQuantity(path: string): boolean {
  return /_[A-Za-z0-9]+(\.\d+)*$/.test(path);
}

/** Usual, guessed, or typed as a band. */
export function isOpen({ from, plusMinus_frac }: Origin): boolean {
  return from === "usual" || from === "guessed" || (from === "typed" && plusMinus_frac !== undefined);
}
