import { countOf } from "../../log/countOf.ts";
import type { RepairList } from "../report/repairList.ts";
import type { RowColumns } from "../rows/rowColumns.ts";

/** Land this near to the level of the sea may truly be at 0 m. */
const NEAR_SEA_m = 20;
/** Of the other heights, as many may lie near the sea as wild ones do anywhere. */
const WILD_frac = 0.01;

/**
 * Drops heights of exactly 0 m, in place, where the log's other heights are nowhere near the sea: a telephone writes 0 for a
 * height it does not have, and the step to it and back would be taken for the receiver's.
 */
export function dropZeroHeights(rows: RowColumns, repairs: RepairList): void {
  if (!repairs.does("heightStep")) {
    return;
  }
  const { elevation_m, time_s } = rows;
  let zeros = 0;
  let near = 0;
  let others = 0;
  for (let i = 0; i < rows.count; i++) {
    if (elevation_m[i] === 0) {
      zeros++;
    } else if (!Number.isNaN(elevation_m[i])) {
      others++;
      near += Math.abs(elevation_m[i]) < NEAR_SEA_m ? 1 : 0;
    }
  }
  if (zeros === 0 || others === 0 || near > WILD_frac * others) {
    return;
  }
  let first_s = Number.NaN;
  let last_s = Number.NaN;
  for (let i = 0; i < rows.count; i++) {
    if (elevation_m[i] === 0) {
      elevation_m[i] = Number.NaN;
      first_s = Number.isNaN(first_s) ? time_s[i] : first_s;
      last_s = time_s[i];
    }
  }
  const words = `${countOf(zeros, "height")} of exactly 0 m, far from all others, taken as not recorded`;
  repairs.add("heightStep", 1, first_s, last_s, words);
}
