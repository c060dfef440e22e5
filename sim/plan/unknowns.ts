import type { Job, Origin } from "../../shared/job/job.ts";
import { M_PER_KM } from "../../shared/units.ts";
import { prepare } from "../step/prepare.ts";
import type { Trace } from "../trace/trace.ts";
import { rangeOn } from "./range.ts";

/** How far a value may be off where its origin does not say. Assumed. */
const USUAL_BAND_frac = 0.1;

/** What one value that nobody measured does to the range of a pack, over the band it may lie in. */
export interface Unknown {
  /** Path in the job, such as `vehicle.tyres.rolling_coeff`. */
  readonly path: string;
  readonly from: Origin["from"];
  readonly value: number;
  readonly plusMinus_frac: number;
  readonly atLow_km: number;
  readonly atHigh_km: number;
  /** The larger of the two distances from the range as reckoned. */
  readonly effect_km: number;
}

/**
 * The values of a job that are still usual or guessed, ordered by what they do to one pack's range on a road: each is put to the lower
 * and the upper end of its band while all others stay (one at a time: what two of them do together is not in it).
 * A share stays at most 1. `isCancelled` is asked between values.
 */
export function unknownsByEffect(
  job: Job,
  packIndex: number,
  trace: Trace,
  isCancelled: () => boolean = () => false,
): Unknown[] {
  const asReckoned_km = range_km(job, packIndex, trace);
  const found: Unknown[] = [];
  for (const [path, origin] of Object.entries(job.origins)) {
    if (isCancelled()) break;
    const value = valueAt(job, path);
    if ((origin.from !== "usual" && origin.from !== "guessed") || typeof value !== "number" || value === 0) continue;
    const plusMinus_frac = origin.plusMinus_frac ?? USUAL_BAND_frac;
    const most = path.endsWith("_frac") ? 1 : Number.POSITIVE_INFINITY;
    const at_km = (factor: number) => range_km(withValue(job, path, Math.min(most, value * factor)), packIndex, trace);
    const atLow_km = at_km(1 - plusMinus_frac);
    const atHigh_km = at_km(1 + plusMinus_frac);
    const effect_km = Math.max(Math.abs(atLow_km - asReckoned_km), Math.abs(atHigh_km - asReckoned_km));
    found.push({ path, from: origin.from, value, plusMinus_frac, atLow_km, atHigh_km, effect_km });
  }
  return found.sort((a, b) => b.effect_km - a.effect_km);
}

function range_km(job: Job, packIndex: number, trace: Trace): number {
  return rangeOn(prepare(job, job.packs[packIndex]), trace).distance_m / M_PER_KM;
}

function valueAt(job: Job, path: string): unknown {
  return path.split(".").reduce<unknown>((at, key) => {
    return typeof at === "object" && at !== null ? (at as Record<string, unknown>)[key] : undefined;
  }, job);
}

/** The job with one number changed, at a path that holds one. */
function withValue(job: Job, path: string, value: number): Job {
  const copy = structuredClone(job);
  const keys = path.split(".");
  const last = keys.pop() ?? "";
  const parent = keys.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], copy);
  (parent as Record<string, unknown>)[last] = value;
  return copy;
}
