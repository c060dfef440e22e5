import type { Job, Origin } from "../../shared/job/job.ts";
import { atPath, withPath } from "../../shared/job/path.ts";
import { M_PER_KM } from "../../shared/units.ts";
import type { Model } from "../step/model.ts";
import { type Prepared, prepare, prepareIn } from "../step/prepare.ts";
import { characteristics } from "../trace/characteristics.ts";
import type { Trace } from "../trace/trace.ts";
import { decidingCondition } from "./conditions/condition.ts";
import { rangeOn } from "./going/range.ts";

/** How far a value may be off where its origin does not say. Assumed. */
export const USUAL_BAND_frac = 0.1;
/** The same of a temperature, whose nought is no beginning. Assumed. */
const USUAL_BAND_K = 3;
/** What no range hangs on: the question itself, and what does not move the car. */
export const NO_RANGE = /^(usualDay|longestDay|engine|roads|charger|vehicle\.gross_kg)/;

/** The range of a pack with a value at either end of its band. */
export interface RangeEnds {
  readonly atLow_km: number;
  readonly atHigh_km: number;
}

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
  /** The ranges at ten years in winter at either end, where the job's winter is driven. */
  readonly tenYearsWinter?: RangeEnds;
  /** The larger of the two distances from the range as taken. */
  readonly effect_km: number;
}

/**
 * The values of a job that are still usual, guessed or typed as a band, ordered by what they do to one pack's range on a road: each is put to the lower
 * and the upper end of its band while all others stay (one at a time: what two of them do together is not in it). Counts have no band;
 * a share stays at most 1. What is said of winter and age leaves the range of today as it is. Where the job's winter is driven, all
 * of them are driven at ten years in winter too, where the verdict falls; a new pack in winter follows from that: see `endsIn`.
 * `isCancelled` is asked between values.
 */
export function unknownsByEffect(
  job: Job,
  packIndex: number,
  trace: Trace,
  isCancelled: () => boolean = () => false,
): Unknown[] {
  const [pack, condition] = [job.packs[packIndex], decidingCondition(job)];
  const today: Prepared = { job, pack, model: prepare(job, pack) };
  const old: Prepared | undefined = condition && {
    job,
    pack,
    condition,
    model: prepareIn(job, pack, condition, today),
  };
  const asTaken = drivenRange(today.model, trace);
  const preparedAt = (path: string, end: number, like: Prepared) => {
    const changed = withPath(job, path, end);
    const changedCondition = (like === old ? decidingCondition(changed) : undefined) ?? {};
    return prepareIn(changed, changed.packs[packIndex], changedCondition, like);
  };
  const found: Unknown[] = [];
  for (const open of openValues(job)) {
    if (isCancelled()) break;
    const { path, low, high } = open;
    const isOfWinter = NOT_TODAY.test(path);
    const at = (end: number) => (isOfWinter ? asTaken : drivenRange(preparedAt(path, end, today), trace));
    const [atLow, atHigh] = [at(low), at(high)];
    const inOldWinter = (end: number, old: Prepared) => drivenRange(preparedAt(path, end, old), trace).range_km;
    const effects_km = [atLow.range_km - asTaken.range_km, atHigh.range_km - asTaken.range_km];
    found.push({
      ...open,
      asTaken_km: asTaken.range_km,
      atLow_km: atLow.range_km,
      atHigh_km: atHigh.range_km,
      failsAtLow: atLow.isStuck && !asTaken.isStuck,
      failsAtHigh: atHigh.isStuck && !asTaken.isStuck,
      ...(old && { tenYearsWinter: { atLow_km: inOldWinter(low, old), atHigh_km: inOldWinter(high, old) } }),
      effect_km: Math.max(...effects_km.map(Math.abs)),
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
    if (!isOpen(origin) || typeof value !== "number") return [];
    if (NO_RANGE.test(path) || !isQuantity(path)) return [];
    const [low, high] = bandEnds(path, value, origin);
    if (low === high) return [];
    const plusMinus_frac = origin.plusMinus_frac ?? shareOf(path, value);
    return [{ path, from: origin.from, value, plusMinus_frac, low, high }];
  });
}

/** What only winter and age hang on. */
export const NOT_TODAY = /^(allowance|conditions)\.|winterDuty_frac$/;

/** Either end of the band that a value may lie in, the lower first: by its own share, else the usual one, of a temperature in kelvin. */
export function bandEnds(path: string, value: number, { plusMinus_frac }: Origin): readonly [number, number] {
  if (plusMinus_frac === undefined && isTemperature(path)) return [value - USUAL_BAND_K, value + USUAL_BAND_K];
  return endsOf(path, value, plusMinus_frac ?? USUAL_BAND_frac);
}

/** The usual band of a value as a share of it; of a temperature at nought there is none, and its band in kelvin is what counts. */
function shareOf(path: string, value: number): number {
  if (!isTemperature(path)) return USUAL_BAND_frac;
  return value === 0 ? 0 : USUAL_BAND_K / Math.abs(value);
}

function isTemperature(path: string): boolean {
  return path.endsWith("_degC");
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
