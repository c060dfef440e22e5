import { countOf } from "../../log/countOf.ts";
import { writeClock } from "../../log/writeTime.ts";
import type { RepairList } from "../report/repairList.ts";
import { NEAR_s } from "./findJumps.ts";
import { layOut } from "./plane.ts";
import { dropPosition, positioned, type RowColumns } from "./rowColumns.ts";

/** So many fixes on each side show that the car stands. */
const BESIDE = 2;
/** So many fixes, and for so long, may lie apart from them: reflected signals last some seconds to half a minute. */
const MOST_APART = 3;
const LONGEST_s = 40;
/** They lie further off than the scatter of the fixes on both sides by this factor, and so much more: half of what a reflection off a house front does. Assumed. */
const SCATTERS = 2.5;
const LEAST_STEP_m = 8;

/**
 * Drops the positions of up to three fixes in a row that lie apart while the car stands, in place: two fixes before and two behind them are of one
 * place. No car drives off, turns and is back where it was within 40 s. For fixes too far apart in time to tell a step of the positions from driving otherwise.
 */
export function dropStandingJumps(rows: RowColumns, repairs: RepairList, utcOffset_s: number): void {
  if (!repairs.does("multipath")) return;
  const where = positioned(rows);
  const { east_m, north_m } = layOut(
    Float64Array.from(where, (i) => rows.latitude_deg[i]),
    Float64Array.from(where, (i) => rows.longitude_deg[i]),
  );
  const time_s = (k: number) => rows.time_s[where[k]];
  for (let k = BESIDE; k + BESIDE < where.length; k++) {
    for (let count = 1; count <= MOST_APART && k + count + BESIDE <= where.length; count++) {
      if (time_s(k + count) - time_s(k - 1) > LONGEST_s) break;
      if (time_s(k) - time_s(k - 1) <= NEAR_s) break;
      const beside = [k - 2, k - 1, k + count, k + count + 1];
      const apart_m = apartFrom_m(east_m, north_m, beside, k, count);
      if (apart_m === undefined) continue;
      for (let each = k; each < k + count; each++) dropPosition(rows, where[each]);
      const off = `${apart_m.toFixed(0)} m off while the car stands dropped at ${writeClock(time_s(k), utcOffset_s)}`;
      const words = `${countOf(count, "fix", "fixes")} ${off}`;
      repairs.add("multipath", count, time_s(k), time_s(k + count - 1), words, apart_m);
      k += count;
      break;
    }
  }
}

/** How far the fixes from `first` on lie off the place of those beside, at least; undefined where that is within their scatter. */
function apartFrom_m(
  east_m: Float64Array,
  north_m: Float64Array,
  beside: readonly number[],
  first: number,
  count: number,
): number | undefined {
  const mean = (of: Float64Array) => beside.reduce((sum, k) => sum + of[k], 0) / beside.length;
  const [east, north] = [mean(east_m), mean(north_m)];
  const off_m = (k: number) => Math.hypot(east_m[k] - east, north_m[k] - north);
  const scatter_m = Math.sqrt(beside.reduce((sum, k) => sum + off_m(k) ** 2, 0) / beside.length);
  let least_m = Number.POSITIVE_INFINITY;
  for (let k = first; k < first + count; k++) least_m = Math.min(least_m, off_m(k));
  return least_m > LEAST_STEP_m + SCATTERS * scatter_m ? least_m : undefined;
}
