import { median } from "simple-statistics";
import { countOf } from "../../log/countOf.ts";
import { writeClock } from "../../log/writeTime.ts";
import type { RepairList } from "../report/repairList.ts";
import { layOut } from "./plane.ts";
import { dropPosition, positioned, type RowColumns } from "./rowColumns.ts";

/** Steps are looked for only between fixes this near in time: over longer, driving itself moves the car as far. */
export const NEAR_s = 3.5;
/** A reflected signal that holds longer than this cannot be told from the road. */
const LONGEST_STEP_s = 30;
/** Smallest step looked for: half of what a reflection off a house front does. Assumed. */
const LEAST_STEP_m = 8;
/** A change of velocity the car itself may make between two fixes, in m/s2: hard braking on a dry road. */
const CAR_CHANGE_mps2 = 8;
const WINDOW = 3;
/** Variance of an offset of which only its being there is known: some 40 m. */
const UNKNOWN_OFFSET_m2 = 1600;
/** Metres in a degree, to half a percent: for shifts of tens of metres. */
const M_PER_DEG = 111300;

/** What the increments of the positions show of their noise, and where they jump without coming back. */
export interface JumpFindings {
  /** Standard deviation per axis of the noise in a position's change from one fix to the next. */
  readonly incrementNoise_m: number;
  /** Rows at which the positions change their offset, with the variance of the change per axis. */
  readonly offsets: ReadonlyMap<number, number>;
  /** Times, first and last, between which positions were put back. */
  readonly spans: readonly (readonly [number, number])[];
}

/**
 * Finds steps of the positions to one side and back, as reflected signals make them, and puts the positions in between
 * back (one or two are dropped). A step is a change of position that lies more than five standard deviations (by the median of absolute
 * deviations [Rousseeuw1993, eq. 1.3]) from what the median of its neighbours' velocities foretells; a step and one
 * that undoes it within 30 s belong together.
 */
export function findJumps(rows: RowColumns, repairs: RepairList, utcOffset_s: number): JumpFindings {
  const where = positioned(rows);
  const latitude_deg = Float64Array.from(where, (i) => rows.latitude_deg[i]);
  const longitude_deg = Float64Array.from(where, (i) => rows.longitude_deg[i]);
  const { east_m, north_m } = layOut(latitude_deg, longitude_deg);
  const n = where.length;
  const time_s = Float64Array.from(where, (i) => rows.time_s[i]);
  const east = residuals(east_m, time_s);
  const north = residuals(north_m, time_s);
  const incrementNoise_m = robustSpread(east, north, rows, where);
  const threshold_m = Math.max(LEAST_STEP_m, 5 * incrementNoise_m);
  const offsets = new Map<number, number>();
  const spans: (readonly [number, number])[] = [];
  const does = repairs.does("multipath");

  let open = -1;
  for (let k = 1; k < n; k++) {
    const dt_s = time_s[k] - time_s[k - 1];
    const size_m = Math.hypot(east[k], north[k]);
    if (!(dt_s <= NEAR_s) || !(size_m > threshold_m + 0.5 * CAR_CHANGE_mps2 * (dt_s * dt_s - dt_s))) {
      continue;
    }
    if (open >= 0 && time_s[k] - time_s[open] <= LONGEST_STEP_s) {
      const left_m = Math.hypot(east[open] + east[k], north[open] + north[k]);
      const openSize_m = Math.hypot(east[open], north[open]);
      if (left_m < 0.45 * Math.max(size_m, openSize_m) + 2 * incrementNoise_m) {
        if (does && k - open <= 2) {
          drop(rows, where, open, k, Math.max(size_m, openSize_m), repairs, utcOffset_s);
        } else if (does) {
          const step = { east_m: 0.5 * (east[open] - east[k]), north_m: 0.5 * (north[open] - north[k]) };
          putBack(rows, where, open, k, step, repairs, utcOffset_s);
          offsets.set(where[open], 9 * incrementNoise_m ** 2);
          offsets.set(where[k], 9 * incrementNoise_m ** 2);
          spans.push([time_s[open], time_s[k - 1]]);
        }
        open = -1;
        continue;
      }
      offsets.set(where[open], UNKNOWN_OFFSET_m2);
    } else if (open >= 0) {
      offsets.set(where[open], UNKNOWN_OFFSET_m2);
    }
    open = k;
  }
  if (open >= 0) {
    offsets.set(where[open], UNKNOWN_OFFSET_m2);
  }
  return { incrementNoise_m, offsets, spans };
}

/** Takes a wild fix or two out. */
function drop(
  rows: RowColumns,
  where: Uint32Array,
  from: number,
  to: number,
  size_m: number,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  const from_s = rows.time_s[where[from]];
  for (let k = from; k < to; k++) {
    dropPosition(rows, where[k]);
  }
  const count = to - from;
  const off = `${size_m.toFixed(0)} m off dropped at ${writeClock(from_s, utcOffset_s)}`;
  repairs.add("wildFix", count, from_s, rows.time_s[where[to - 1]], `${countOf(count, "fix", "fixes")} ${off}`, size_m);
}

/** Shifts the positions of a sideways step back to the road: how they move from one to the next is still right. */
function putBack(
  rows: RowColumns,
  where: Uint32Array,
  from: number,
  to: number,
  step: { readonly east_m: number; readonly north_m: number },
  repairs: RepairList,
  utcOffset_s: number,
): void {
  for (let k = from; k < to; k++) {
    const i = where[k];
    const latitude_rad = (rows.latitude_deg[i] * Math.PI) / 180;
    rows.latitude_deg[i] -= step.north_m / M_PER_DEG;
    rows.longitude_deg[i] -= step.east_m / (M_PER_DEG * Math.max(0.01, Math.cos(latitude_rad)));
  }
  const from_s = rows.time_s[where[from]];
  const length_s = rows.time_s[where[to]] - from_s;
  const size_m = Math.hypot(step.east_m, step.north_m);
  const at = writeClock(from_s, utcOffset_s);
  const detail = `positions ${size_m.toFixed(0)} m to one side for ${length_s.toFixed(0)} s put back at ${at}`;
  repairs.add("multipath", 1, from_s, rows.time_s[where[to - 1]], detail, size_m);
}

/** Change of position less what the median velocity of up to three changes on each side foretells. */
function residuals(position_m: Float64Array, time_s: Float64Array): Float64Array {
  const n = position_m.length;
  const velocity = new Float64Array(n);
  for (let k = 1; k < n; k++) {
    velocity[k] = (position_m[k] - position_m[k - 1]) / Math.max(time_s[k] - time_s[k - 1], 0.01);
  }
  const residual = new Float64Array(n);
  const near: number[] = [];
  for (let k = 1; k < n; k++) {
    near.length = 0;
    for (let j = Math.max(1, k - WINDOW); j <= Math.min(n - 1, k + WINDOW); j++) {
      if (j !== k && Math.abs(time_s[j] - time_s[k]) <= WINDOW * NEAR_s) {
        near.push(velocity[j]);
      }
    }
    const dt_s = time_s[k] - time_s[k - 1];
    residual[k] = near.length >= 2 ? (velocity[k] - median(near)) * dt_s : 0;
  }
  return residual;
}

/** 1.4826 times the median of absolute residuals: the standard deviation of a normal distribution with outliers in it. */
function robustSpread(east: Float64Array, north: Float64Array, rows: RowColumns, where: Uint32Array): number {
  const sizes: number[] = [];
  const every = Math.max(1, Math.floor(where.length / 20000));
  for (let k = 1; k < where.length; k += every) {
    if (rows.time_s[where[k]] - rows.time_s[where[k - 1]] <= NEAR_s) {
      sizes.push(Math.abs(east[k]), Math.abs(north[k]));
    }
  }
  return sizes.length > 20 ? 1.4826 * median(sizes) : 2;
}
