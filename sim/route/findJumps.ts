import { median } from "simple-statistics";
import { layOut } from "./plane.ts";
import { writeClock } from "./readTime.ts";
import type { RepairList } from "./repairList.ts";
import { dropPosition, positioned, type RowColumns } from "./rowColumns.ts";

/** Steps are looked for only between fixes this near in time: over longer, driving itself moves the car as far. */
const NEAR_s = 3.5;
/** A reflected signal that holds longer than this cannot be told from the road. */
const LONGEST_STEP_s = 30;
/** Smallest step looked for: half of what a reflection off a house front does. Assumed. */
const LEAST_STEP_m = 8;
/** A change of velocity the car itself may make between two fixes, in m/s2: hard braking on a dry road. */
const CAR_CHANGE_mps2 = 8;
const WINDOW = 3;

/** What the increments of the positions show of their noise, and where they jump without coming back. */
export interface JumpFindings {
  /** Standard deviation per axis of the noise in a position's change from one fix to the next. */
  readonly incrementNoise_m: number;
  /** Row after which the positions are offset for good, if any. */
  readonly offsetRows: ReadonlySet<number>;
}

/**
 * Finds steps of the positions to one side and back, as reflected signals make them, and drops the positions in
 * between. A step is a change of position that lies more than five standard deviations (by the median of absolute
 * deviations [Rousseeuw1993, eq. 1.3]) from what the median of its neighbours' velocities foretells; a step and one
 * that undoes it within 30 s belong together.
 */
export function findJumps(rows: RowColumns, repairs: RepairList, utcOffset_s: number): JumpFindings {
  const where = positioned(rows);
  const lat_deg = Float64Array.from(where, (i) => rows.lat_deg[i]);
  const lon_deg = Float64Array.from(where, (i) => rows.lon_deg[i]);
  const { east_m, north_m } = layOut(lat_deg, lon_deg);
  const n = where.length;
  const time_s = Float64Array.from(where, (i) => rows.time_s[i]);
  const east = residuals(east_m, time_s);
  const north = residuals(north_m, time_s);
  const incrementNoise_m = robustSpread(east, north, rows, where);
  const threshold_m = Math.max(LEAST_STEP_m, 5 * incrementNoise_m);
  const offsetRows = new Set<number>();
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
        if (does) {
          drop(rows, where, open, k, Math.max(size_m, openSize_m), repairs, utcOffset_s);
        }
        open = -1;
        continue;
      }
      offsetRows.add(where[open]);
    } else if (open >= 0) {
      offsetRows.add(where[open]);
    }
    open = k;
  }
  if (open >= 0) {
    offsetRows.add(where[open]);
  }
  return { incrementNoise_m, offsetRows };
}

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
  const to_s = rows.time_s[where[to - 1]];
  for (let k = from; k < to; k++) {
    dropPosition(rows, where[k]);
  }
  const at = writeClock(from_s, utcOffset_s);
  const length_s = rows.time_s[where[to]] - from_s;
  if (to - from <= 2) {
    const count = to - from;
    repairs.add(
      "wildFix",
      count,
      from_s,
      to_s,
      `${count} ${count === 1 ? "fix" : "fixes"} ${size_m.toFixed(0)} m off dropped at ${at}`,
      size_m,
    );
  } else {
    const detail = `positions ${size_m.toFixed(0)} m to one side for ${length_s.toFixed(0)} s cut out at ${at}`;
    repairs.add("multipath", 1, from_s, to_s, detail, size_m);
  }
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
