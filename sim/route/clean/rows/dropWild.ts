import { countOf } from "../../log/countOf.ts";
import { FASTEST_CAR_mps } from "../../log/fastestCar.ts";
import { geodesicLeg } from "../../log/geodesicLeg.ts";
import { writeFar } from "../../log/writeFar.ts";
import { writeClock } from "../../log/writeTime.ts";
import type { RepairList } from "../report/repairList.ts";
import { dropPosition, positioned, type RowColumns } from "./rowColumns.ts";

/** Position error that two honest fixes may have between them on top of the distance driven. */
const SLACK_m = 50;
/** This many fixes that agree with one another and not with the one before are a new place, not wild. */
const AGREEING = 8;

/** Drops positions at exactly 0,0: what receivers write before they have a lock. */
export function dropZeroFixes(rows: RowColumns, repairs: RepairList): void {
  if (!repairs.does("zeroFix")) {
    return;
  }
  let count = 0;
  let from_s = Number.NaN;
  let to_s = Number.NaN;
  for (let i = 0; i < rows.count; i++) {
    if (Math.abs(rows.latitude_deg[i]) < 1e-6 && Math.abs(rows.longitude_deg[i]) < 1e-6) {
      dropPosition(rows, i);
      from_s = count === 0 ? rows.time_s[i] : from_s;
      to_s = rows.time_s[i];
      count++;
    }
  }
  if (count > 0) {
    repairs.add("zeroFix", count, from_s, to_s, `${countOf(count, "position")} at 0,0 dropped`);
  }
}

/**
 * Drops positions that cannot be reached from the last good one at 250 km/h. Where several in a row cannot, yet can be
 * reached from one another, the log goes on somewhere else and they stay: the gap is classed later.
 */
export function dropUnreachable(rows: RowColumns, repairs: RepairList, utcOffset_s: number): void {
  if (!repairs.does("wildFix")) {
    return;
  }
  const where = positioned(rows);
  let good = where.length > 0 ? firstGood(rows, where) : 0;
  for (let k = 0; k < good; k++) {
    drop(rows, where, k, k + 1, good, repairs, utcOffset_s);
  }
  let k = good + 1;
  while (k < where.length) {
    if (isReachable(rows, where[good], where[k])) {
      good = k++;
      continue;
    }
    let end = k + 1;
    while (end < where.length && end - k < AGREEING && !isReachable(rows, where[good], where[end])) {
      end++;
    }
    const isElsewhere = end - k >= AGREEING && isChain(rows, where, k, end);
    if (!isElsewhere) {
      // at the end of the log, or back within reach: all between are wild, if they cannot vouch for one another
      const to = end - k >= AGREEING ? k + 1 : end;
      drop(rows, where, k, to, good, repairs, utcOffset_s);
      k = to;
    } else {
      good = k++;
    }
  }
}

/** The first position from which the next few can be reached, so that a wild one at the start does not condemn the rest. */
function firstGood(rows: RowColumns, where: Uint32Array): number {
  for (let k = 0; k < Math.min(where.length - 2, 20); k++) {
    if (isReachable(rows, where[k], where[k + 1]) || isReachable(rows, where[k], where[k + 2])) {
      return k;
    }
  }
  return 0;
}

function isChain(rows: RowColumns, where: Uint32Array, from: number, to: number): boolean {
  for (let k = from + 1; k < to; k++) {
    if (!isReachable(rows, where[k - 1], where[k])) {
      return false;
    }
  }
  return true;
}

function isReachable(rows: RowColumns, a: number, b: number): boolean {
  return legBetween(rows, a, b) <= SLACK_m + FASTEST_CAR_mps * (rows.time_s[b] - rows.time_s[a]);
}

function legBetween(rows: RowColumns, a: number, b: number): number {
  return geodesicLeg(rows.latitude_deg[a], rows.longitude_deg[a], rows.latitude_deg[b], rows.longitude_deg[b]).length_m;
}

function drop(
  rows: RowColumns,
  where: Uint32Array,
  from: number,
  to: number,
  good: number,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  let furthest_m = 0;
  for (let k = from; k < to; k++) {
    furthest_m = Math.max(furthest_m, legBetween(rows, where[good], where[k]));
  }
  for (let k = from; k < to; k++) {
    dropPosition(rows, where[k]);
  }
  const [from_s, to_s] = [rows.time_s[where[from]], rows.time_s[where[to - 1]]];
  const far = writeFar(furthest_m);
  const count = to - from;
  const detail = `${countOf(count, "fix", "fixes")} ${far} off dropped at ${writeClock(from_s, utcOffset_s)}`;
  repairs.add("wildFix", count, from_s, to_s, detail, furthest_m);
}
