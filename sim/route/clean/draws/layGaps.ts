import { writeFar } from "../../log/writeFar.ts";
import { writeClock } from "../../log/writeTime.ts";
import type { Segment } from "../gaps/findGaps.ts";
import { shortestRoad_m } from "../gaps/shortestRoad.ts";
import { circuity_ratio, cornerAcross_m } from "../motion/circuity.ts";
import type { SmoothedPositions } from "../motion/smoothPositions.ts";
import type { RepairList } from "../report/repairList.ts";
import type { Timeline } from "../rows/timeline.ts";
import type { AlongRoad } from "./drivingModel.ts";

/** Speeds on either side of a gap are known to about 0.5 m/s, from positions too; two standard deviations. Assumed. */
const SPEED_OFF_mps = 1;
/** Two standard deviations of the difference of two positions, over the standard deviation of one. */
const LINE_OFF = 2 * Math.SQRT2;
/** In a longer gap a stop and a way back are as likely as a bend. Assumed. */
const LONGEST_s = 180;
/** How well the road across a gap is known, as a share of it. Assumed. */
const BY_LINE_frac = 0.1;
const BY_SPEEDS_frac = 0.25;

/**
 * Lays the way along the road across each gap driven over, in place: the straight line times how much this log's road winds, or two legs
 * round a corner. That may be much shorter than what the speeds on both sides make, since the car may have stopped on the way; but where it is
 * shorter than the road which braking, standing and moving away again takes, both taken at the edge of what is known of them, the
 * positions do not show the road and the speeds win, and that is noted.
 */
export function layGaps(
  segment: Segment,
  line: Timeline,
  known: AlongRoad,
  speed_mps: Float64Array,
  smoothed: SmoothedPositions,
  correlated_m: number,
  repairs: RepairList,
  utcOffset_s: number,
): void {
  let shift_m = 0;
  let k = 0;
  const shiftTo = (end: number) => {
    for (; k < end; k++) known.at_m[k] += shift_m;
  };
  for (const gap of segment.bridges) {
    if (gap.kind === "parked") continue;
    const start = placedAt(line, known, gap.from, k, -1);
    const end = placedAt(line, known, gap.from + 1, Math.max(k, start), 1);
    if (start < 0 || end < 0) continue;
    shiftTo(end);
    const [from_mps, to_mps] = [speedAt(known, speed_mps, start), speedAt(known, speed_mps, end)];
    const gap_s = line.time_s[end] - line.time_s[start];
    const bySpeeds_m = 0.5 * (from_mps + to_mps) * gap_s;
    const byLine_m = roadAcross_m(line, smoothed, speed_mps, start, end);
    const [leastFrom_mps, leastTo_mps] = [from_mps, to_mps].map((each_mps) => Math.max(0, each_mps - SPEED_OFF_mps));
    const least_m = shortestRoad_m(leastFrom_mps, leastTo_mps, gap_s);
    const isBySpeeds = gap_s <= LONGEST_s && byLine_m + LINE_OFF * correlated_m < least_m;
    const road_m = isBySpeeds ? bySpeeds_m : byLine_m;
    if (isBySpeeds) {
      const at = writeClock(line.time_s[start], utcOffset_s);
      const words = `the speeds on both sides of the gap at ${at} make ${writeFar(bySpeeds_m)}, even with a stop ${writeFar(least_m)}, the straight line ${writeFar(byLine_m)}: bridged by the speeds`;
      repairs.add(gap.kind, 0, line.time_s[start], line.time_s[end], words);
    }
    shift_m += road_m - (known.at_m[end] + shift_m - known.at_m[start]);
    known.offset_m2[end] += ((isBySpeeds ? BY_SPEEDS_frac : BY_LINE_frac) * road_m) ** 2;
  }
  shiftTo(line.count);
}

/** Moment of a row of the log or, where that has no position, the nearest one with one on the side given; -1 where there is none. */
function placedAt(line: Timeline, known: AlongRoad, row: number, from: number, side: -1 | 1): number {
  let k = from;
  while (k < line.count && line.row[k] !== row) k++;
  while (k >= 0 && k < line.count && Number.isNaN(known.at_m[k])) k += side;
  return k < line.count ? k : -1;
}

/** Recorded speed at a moment or, where there is none, that from the positions. */
function speedAt(known: AlongRoad, speed_mps: Float64Array, k: number): number {
  return Math.max(0, Number.isNaN(known.speed_mps[k]) ? speed_mps[k] : known.speed_mps[k]);
}

/** Road driven across a gap: two legs round a corner, or the straight line times how much this log's road winds. */
function roadAcross_m(
  line: Timeline,
  smoothed: SmoothedPositions,
  speed_mps: Float64Array,
  start: number,
  end: number,
): number {
  const dEast_m = smoothed.east_m[end] - smoothed.east_m[start];
  const dNorth_m = smoothed.north_m[end] - smoothed.north_m[start];
  const chord_m = Math.hypot(dEast_m, dNorth_m);
  const into = headingNear(line, smoothed, start, -1);
  const outOf = headingNear(line, smoothed, end, 1);
  const corner_m = into && outOf && cornerAcross_m(dEast_m, dNorth_m, into, outOf);
  const circuity = circuity_ratio(
    line,
    smoothed,
    speed_mps,
    start,
    line.time_s[end] - line.time_s[start],
    Math.max(1, chord_m),
  );
  // A sharp corner is its two legs, a sweeping bend is nearer to the line: half-way between, neither is far off.
  return corner_m === undefined ? chord_m * circuity : 0.5 * (corner_m + chord_m * circuity);
}

/** Unit vector of the motion at a moment or, where the car is slow there, up to 15 s away on the side given. */
function headingNear(
  line: Timeline,
  smoothed: SmoothedPositions,
  i: number,
  side: -1 | 1,
): readonly [number, number] | undefined {
  for (let k = i; k >= 0 && k < line.count && Math.abs(line.time_s[k] - line.time_s[i]) < 15; k += side) {
    const [east, north] = [smoothed.eastSpeed_mps[k], smoothed.northSpeed_mps[k]];
    const speed_mps = Math.hypot(east, north);
    if (speed_mps > 2) {
      return [east / speed_mps, north / speed_mps];
    }
  }
  return undefined;
}
