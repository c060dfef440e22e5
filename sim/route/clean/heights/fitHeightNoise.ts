import { climbed } from "../../../math/kalman/climbed.ts";
import { smooth } from "../../../math/kalman/smooth.ts";
import { countValues } from "../rows/countValues.ts";
import { type HeightNoise, heightModel } from "./heightModel.ts";

/** Values that are tried: of slope (flat country to mountains), of each fix, of the correlated noise and its time constant. */
const slopes_ratio = [0.001, 0.004, 0.008, 0.015, 0.025, 0.04, 0.07];
const slopesLast_m = [60, 120, 250];
const whites_m = [0.1, 0.3, 1, 3, 6];
const correlated_m = [0.3, 1.5, 3.5, 7, 12];
const correlations_s = [20, 60, 180, 600];
/** So few heights cannot show that a road is flat; then it is not taken to be. */
const SCARCE = 300;
const LONGEST_FIT = 1800;
const START: HeightNoise = { slope_ratio: 0.015, slopeLasts_m: 120, white_m: 1, correlated_m: 3.5, correlation_s: 60 };
/** Few heights far apart may be hills or noise alike: the search begins at both, and what is likelier at its end is taken. */
const HILLY: HeightNoise = { ...START, slope_ratio: 0.04, correlated_m: 7 };

/**
 * The noise under which the heights are likeliest, by the innovations of the filter [Kalman1960] over up to half an hour of
 * moments. So a flat road stays flat under a noisy receiver, and hills stay hills; and the slow drift of a barometer is told from the
 * fidgeting of satellites.
 */
export function fitHeightNoise(time_s: Float64Array, distance_m: Float64Array, elevation_m: Float64Array): HeightNoise {
  const first = Math.max(0, Math.floor((time_s.length - LONGEST_FIT) / 2));
  const last = Math.min(time_s.length, first + LONGEST_FIT);
  const isScarce = countValues(elevation_m, first, last) < SCARCE;
  const tried = {
    white_m: whites_m,
    correlated_m,
    correlation_s: correlations_s,
    slope_ratio: isScarce ? slopes_ratio.filter((slope) => slope > 0.01) : slopes_ratio,
    slopeLasts_m: isScarce ? [START.slopeLasts_m] : slopesLast_m,
  };
  const likelihood = (noise: HeightNoise) =>
    smooth(heightModel(time_s, distance_m, elevation_m, noise, first, last), false).logLikelihood;
  const found = climbed(START, tried, likelihood);
  if (!isScarce) return found;
  const hilly = climbed(HILLY, tried, likelihood);
  return likelihood(hilly) > likelihood(found) ? hilly : found;
}
