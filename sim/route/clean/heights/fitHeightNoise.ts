import { smooth } from "../../../math/kalman/smooth.ts";
import { countValues } from "../rows/countValues.ts";
import { type HeightNoise, heightModel } from "./heightModel.ts";

/** Standard deviations that are tried: of slope (flat country to mountains), of each fix, of the correlated noise. */
const slopes_ratio = [0.001, 0.004, 0.012, 0.03, 0.06];
const whites_m = [0.3, 1, 3, 6];
const wanders_m = [0.3, 3, 8];
/** So few heights cannot show that a road is flat; then it is not taken to be. */
const SCARCE = 300;
const hillySlopes_ratio = slopes_ratio.filter((slope) => slope > 0.01);
const LONGEST_FIT = 1800;

/**
 * The noise under which the heights are likeliest, by the innovations of the filter [Kalman1960] over up to half an hour of
 * moments. So a flat road stays flat under a noisy receiver, and hills stay hills.
 */
export function fitHeightNoise(time_s: Float64Array, distance_m: Float64Array, elevation_m: Float64Array): HeightNoise {
  const first = Math.max(0, Math.floor((time_s.length - LONGEST_FIT) / 2));
  const last = Math.min(time_s.length, first + LONGEST_FIT);
  const isScarce = countValues(elevation_m, first, last) < SCARCE;
  const slopes = isScarce ? hillySlopes_ratio : slopes_ratio;
  const tried = new Map<string, number>();
  const likelihood = (slope: number, white: number, correlated: number): number => {
    const key = `${slope},${white},${correlated}`;
    const known = tried.get(key);
    if (known !== undefined) {
      return known;
    }
    const noise = { slope_ratio: slopes[slope], white_m: whites_m[white], wandering_m: wanders_m[correlated] };
    const { logLikelihood } = smooth(heightModel(time_s, distance_m, elevation_m, noise, first, last), false);
    tried.set(key, logLikelihood);
    return logLikelihood;
  };
  // One quantity after another until none moves: a third of the runs of trying all, and the same answer in practice.
  let [slope, white, correlated] = [Math.floor(slopes.length / 2), 1, 1];
  for (let round = 0; round < 4; round++) {
    const before = `${slope},${white},${correlated}`;
    white = best(whites_m.length, (k) => likelihood(slope, k, correlated));
    correlated = best(wanders_m.length, (k) => likelihood(slope, white, k));
    slope = best(slopes.length, (k) => likelihood(k, white, correlated));
    if (before === `${slope},${white},${correlated}`) {
      break;
    }
  }
  return { slope_ratio: slopes[slope], white_m: whites_m[white], wandering_m: wanders_m[correlated] };
}

/** Index from 0 to n - 1 at which the value is largest. */
function best(n: number, value: (k: number) => number): number {
  let found = 0;
  for (let k = 1; k < n; k++) {
    found = value(k) > value(found) ? k : found;
  }
  return found;
}
