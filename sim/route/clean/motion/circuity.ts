import { median } from "simple-statistics";
import type { Timeline } from "../rows/timeline.ts";
import type { SmoothedPositions } from "./smoothPositions.ts";

const WINDOWS = 200;
const LEAST_WINDOWS = 8;
/** Pieces whose straight length is within a factor of 1.6 are alike. */
const ALIKE = Math.log(1.6);
const MOST_ratio = 1.35;

/** Moments looked at on each side of a gap, so that the work does not grow with the square of a long log. */
const REACH = 5000;

/**
 * Road over straight line for pieces of the length of time given, as this log itself shows it where it is whole around
 * moment `around`: the median over up to 200 pieces driven about as fast (a motorway winds less than a street). 1 where
 * the log is too short to tell; at most 1.35, beyond which a gap is better called unknown.
 */
export function circuity_ratio(
  line: Timeline,
  smoothed: SmoothedPositions,
  speed_mps: Float64Array,
  around: number,
  piece_s: number,
  chord_m: number,
): number {
  const first = Math.max(0, around - REACH);
  const count = Math.min(line.count, around + REACH) - first;
  const time_s = line.time_s.subarray(first, first + count);
  const driven_m = new Float64Array(count);
  const rowsRead = new Int32Array(count); // rows of the log up to here, to tell whole pieces from gaps
  for (let i = 1; i < count; i++) {
    const mean_mps = 0.5 * (speed_mps[first + i] + speed_mps[first + i - 1]);
    driven_m[i] = driven_m[i - 1] + mean_mps * (time_s[i] - time_s[i - 1]);
    rowsRead[i] = rowsRead[i - 1] + (line.row[first + i] >= 0 ? 1 : 0);
  }
  const usualRows = (rowsRead[count - 1] / Math.max(1, time_s[count - 1] - time_s[0])) * piece_s;
  const every = Math.max(1, Math.floor(count / WINDOWS));
  const ratios: number[] = [];
  let end = 0;
  for (let start = 0; start < count; start += every) {
    while (end < count && time_s[end] - time_s[start] < piece_s) {
      end++;
    }
    if (end >= count) {
      break;
    }
    const road_m = driven_m[end] - driven_m[start];
    const isWhole = rowsRead[end] - rowsRead[start] > 0.9 * usualRows;
    const east_m = smoothed.east_m[first + end] - smoothed.east_m[first + start];
    const north_m = smoothed.north_m[first + end] - smoothed.north_m[first + start];
    const straight_m = Math.max(1, Math.hypot(east_m, north_m));
    if (isWhole && road_m > 2 * piece_s && Math.abs(Math.log(straight_m / chord_m)) < ALIKE) {
      ratios.push(road_m / straight_m);
    }
  }
  return ratios.length < LEAST_WINDOWS ? 1 : Math.min(MOST_ratio, Math.max(1, median(ratios)));
}

/**
 * Length of the road across a gap that begins on one heading and ends on another: where they differ by 60 to 120
 * degrees and the two lines meet ahead of the gap's start and behind its end, the car turned a corner there, and the
 * road is the two legs. Undefined where it was no such corner.
 */
export function cornerAcross_m(
  dEast_m: number,
  dNorth_m: number,
  into: readonly [number, number],
  outOf: readonly [number, number],
): number | undefined {
  const cross = into[0] * outOf[1] - into[1] * outOf[0];
  const chord_m = Math.hypot(dEast_m, dNorth_m);
  if (Math.abs(cross) < Math.sin((60 * Math.PI) / 180) || chord_m < 20) {
    return undefined;
  }
  const first_m = (dEast_m * outOf[1] - dNorth_m * outOf[0]) / cross;
  const second_m = (into[0] * dNorth_m - into[1] * dEast_m) / cross;
  const isCorner = first_m > 0.05 * chord_m && second_m > 0.05 * chord_m && first_m + second_m < 1.6 * chord_m;
  return isCorner ? first_m + second_m : undefined;
}
