import { median } from "simple-statistics";
import { writeClock } from "../../log/writeTime.ts";
import type { RepairList } from "../report/repairList.ts";

/** Values on each side whose medians say whether a change stays. */
const SIDE = 5;
/** Smallest step or spike looked for. Roads have no steps; a receiver's geoid table or a weather front does. Assumed. */
const LEAST_STEP_m = 6;

/**
 * Takes steps and spikes out of heights, in place: where height changes from one row to the next by more than six times
 * its usual change (6 m at least) and more than the steepest road would give, and the medians of five values on each
 * side confirm it, everything after is shifted back; where they do not, the single value is dropped (NaN).
 */
export function mendHeights(
  time_s: Float64Array,
  distance_m: Float64Array,
  elevation_m: Float64Array,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  if (!repairs.does("heightStep")) {
    return;
  }
  const rows: number[] = [];
  for (let i = 0; i < elevation_m.length; i++) {
    if (!Number.isNaN(elevation_m[i])) {
      rows.push(i);
    }
  }
  if (rows.length < 2 * SIDE) {
    return;
  }
  const changes = rows.slice(1).map((row, k) => Math.abs(elevation_m[row] - elevation_m[rows[k]]));
  const limit_m = Math.max(LEAST_STEP_m, 6 * 1.4826 * median(changes));
  let shift_m = 0;
  for (let k = 1; k < rows.length; k++) {
    const row = rows[k];
    elevation_m[row] += shift_m;
    const change_m = elevation_m[row] - elevation_m[rows[k - 1]];
    const road_m = 0.35 * (distance_m[row] - distance_m[rows[k - 1]]);
    if (Math.abs(change_m) <= limit_m + road_m || Number.isNaN(elevation_m[rows[k - 1]])) {
      continue;
    }
    const before_m = median(valuesAt(elevation_m, rows, Math.max(0, k - SIDE), k, 0));
    const after_m = median(valuesAt(elevation_m, rows, k + 1, Math.min(rows.length, k + 1 + SIDE), shift_m));
    const at = writeClock(time_s[row], utcOffset_s);
    if (Math.abs(after_m - before_m) > 0.6 * Math.abs(change_m)) {
      shift_m -= change_m;
      elevation_m[row] -= change_m;
      const detail = `height stepped ${change_m > 0 ? "up" : "down"} ${Math.abs(change_m).toFixed(0)} m at ${at}; taken out`;
      repairs.add("heightStep", 1, time_s[row], time_s[row], detail, Math.abs(change_m));
    } else if (Math.abs(elevation_m[row] - before_m) > 0.5 * limit_m) {
      elevation_m[row] = elevation_m[rows[k - 1]];
      const detail = `one height ${Math.abs(change_m).toFixed(0)} m off at ${at}; dropped`;
      repairs.add("heightStep", 1, time_s[row], time_s[row], detail, Math.abs(change_m));
    }
  }
}

function valuesAt(
  elevation_m: Float64Array,
  rows: readonly number[],
  from: number,
  to: number,
  shift_m: number,
): number[] {
  const values: number[] = [];
  for (let k = from; k < to; k++) {
    if (!Number.isNaN(elevation_m[rows[k]])) {
      values.push(elevation_m[rows[k]] + shift_m);
    }
  }
  return values.length > 0 ? values : [0];
}
