import { geodesicLeg } from "../../log/geodesicLeg.ts";
import type { RowColumns } from "./rowColumns.ts";

/** Recorded speed near a row, or else from the positions of ten seconds on that side; NaN where there is neither. */
export function speedNear_mps(rows: RowColumns, i: number, side: -1 | 1): number {
  let sum = 0;
  let count = 0;
  let far = -1;
  for (let k = i; k >= 0 && k < rows.count && Math.abs(rows.time_s[k] - rows.time_s[i]) <= 10; k += side) {
    if (!Number.isNaN(rows.speed_mps[k]) && Math.abs(rows.time_s[k] - rows.time_s[i]) <= 3) {
      sum += rows.speed_mps[k];
      count++;
    }
    if (!Number.isNaN(rows.latitude_deg[k])) {
      far = k;
    }
  }
  if (count > 0) {
    return sum / count;
  }
  const near = nearestPosition(rows, i, side, 5);
  if (far < 0 || near < 0 || far === near) {
    return Number.NaN;
  }
  const { length_m } = geodesicLeg(
    rows.latitude_deg[near],
    rows.longitude_deg[near],
    rows.latitude_deg[far],
    rows.longitude_deg[far],
  );
  return length_m / Math.abs(rows.time_s[far] - rows.time_s[near]);
}

/** The first row with a position from row i on the side given, within 15 s or two usual intervals; -1 where there is none. */
export function nearestPosition(rows: RowColumns, i: number, side: -1 | 1, interval_s: number): number {
  const within_s = Math.max(15, 2 * interval_s);
  for (let k = i; k >= 0 && k < rows.count && Math.abs(rows.time_s[k] - rows.time_s[i]) <= within_s; k += side) {
    if (!Number.isNaN(rows.latitude_deg[k])) {
      return k;
    }
  }
  return -1;
}
