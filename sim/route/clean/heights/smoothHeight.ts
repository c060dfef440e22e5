import { overlappingChunks } from "../../../math/kalman/overlappingChunks.ts";
import { smooth } from "../../../math/kalman/smooth.ts";
import { type HeightNoise, heightModel } from "./heightModel.ts";

/** Moments on each side after which the ends no longer matter. */
const OVERLAP = 1024;

/**
 * Height of the road at every moment, from heights logged at some (NaN: not logged), smoothed along distance: a Kalman
 * filter with backward smoothing over height and slope by distance, and the receiver's correlated noise by time. Where the car
 * stands the height stands.
 */
export function smoothHeight(
  time_s: Float64Array,
  distance_m: Float64Array,
  elevation_m: Float64Array,
  noise: HeightNoise,
): Float64Array {
  const n = time_s.length;
  const result = new Float64Array(n);
  for (const { from, to, first, last } of overlappingChunks(n, OVERLAP)) {
    const model = heightModel(time_s, distance_m, elevation_m, noise, first, last);
    const { mean } = smooth(model);
    for (let i = from; i < to; i++) {
      result[i] = mean[(i - first) * model.states];
    }
  }
  return result;
}
