import { climbed } from "../../../math/kalman/climbed.ts";
import type { Segment } from "../gaps/findGaps.ts";
import { layOut } from "../rows/plane.ts";
import type { RowColumns } from "../rows/rowColumns.ts";
import { type PositionInput, type PositionNoise, runPositions } from "./smoothPositions.ts";

/**
 * Standard deviations per axis that are tried: from a receiver that smooths its own output to a street of high houses.
 * The service promises 8 m at 95 % in the open, about 3 m per axis [GPSSPS2020, table 3.8-3].
 */
const correlated_m = [0.2, 0.7, 1.5, 3, 5, 8, 12];
const whites_m = [0.03, 0.1, 0.5, 1.5];
/** Time constants that are tried. */
const correlations_s = [10, 20, 50, 120];
/**
 * Accelerations per axis that are tried: they have a standard deviation of 0.6 to 0.9 m/s2 along the road in the standard cycles (computed from the cycles on
 * board), and bends add as much across it, taken at speed up to twice of that. Where it is held too low, a winding road driven fast passes
 * for a receiver's drift, and its bends are cut.
 */
const accelerations_mps2 = [0.6, 0.9, 1.4];
const tried = { correlated_m, white_m: whites_m, correlation_s: correlations_s, acceleration_mps2: accelerations_mps2 };
/** Fixes looked at: enough for stands and straights among them. */
const LONGEST_FIT = 2000;
/** Between fixes further apart than this the car's own motion hides the noise: turning off at a corner would pass for a bad receiver. */
export const THINNEST_s = 4;
const USUAL: PositionNoise = { correlated_m: 5, white_m: 0.5, correlation_s: 20, acceleration_mps2: 0.9 };

/** The noise under which the positions of the longest segment are likeliest; that of a telephone where it cannot tell. */
export function fitPositionNoise(rows: RowColumns, segments: readonly Segment[], interval_s: number): PositionNoise {
  if (interval_s > THINNEST_s) {
    return USUAL;
  }
  const longest = segments.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a));
  const middle = Math.floor((longest.from + longest.to) / 2);
  const from = Math.max(longest.from, middle - LONGEST_FIT / 2);
  const to = Math.min(longest.to, middle + LONGEST_FIT / 2);
  const plane = layOut(rows.latitude_deg.subarray(from, to), rows.longitude_deg.subarray(from, to));
  if (plane.east_m.filter((value) => !Number.isNaN(value)).length < 60) {
    return USUAL;
  }
  const n = to - from;
  const likelihood = (noise: PositionNoise): number => {
    const input: PositionInput = {
      ...plane,
      time_s: rows.time_s.subarray(from, to),
      isStanding: new Uint8Array(n),
      offset_m2: new Float64Array(n),
      noise,
    };
    return runPositions(input, 0, n, false).logLikelihood;
  };
  return climbed(USUAL, tried, likelihood);
}
