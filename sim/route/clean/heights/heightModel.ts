import type { MotionModel } from "../../../math/kalman/motionModel.ts";
import { rateModel } from "../../../math/kalman/rateModel.ts";

/** Slopes of roads hold over some hundreds of metres. Assumed: 300 m, about the length of a street's one gradient. */
const SLOPE_LASTS_m = 300;
/** The receiver's height wanders with a time constant of about a minute. Assumed. */
const WANDER_s = 60;

/** How a log's heights scatter, as fits the log best. */
export interface HeightNoise {
  readonly slope_ratio: number;
  readonly white_m: number;
  readonly wandering_m: number;
}

/** States of the model: height, slope, correlated noise. */
export const HEIGHT_STATES = 3;

/**
 * Height and slope of the road by distance, and the receiver's correlated noise by time, over moments `first` to `last` of a log.
 * What tells hills from noise is that noise goes with time and hills with distance. NaN in `elevation_m` is "not recorded".
 */
export function heightModel(
  time_s: Float64Array,
  distance_m: Float64Array,
  elevation_m: Float64Array,
  noise: HeightNoise,
  first: number,
  last: number,
): MotionModel {
  const row = Float64Array.of(1, 0, 1);
  const value = new Float64Array(1);
  const white = noise.white_m ** 2;
  const correlated = noise.wandering_m ** 2;
  const fillSlope = rateModel(HEIGHT_STATES);
  return {
    states: HEIGHT_STATES,
    axes: 1,
    events: last - first,
    startCovariance: Float64Array.of(400, 0, 0, 0, noise.slope_ratio ** 2, 0, 0, 0, correlated),
    startMean: Float64Array.of(firstValue(elevation_m, first, last), 0, 0),
    transition(k, transition, spread) {
      const by_m = Math.max(0, distance_m[first + k] - distance_m[first + k - 1]);
      const dt_s = time_s[first + k] - time_s[first + k - 1];
      fillSlope(by_m, noise.slope_ratio, SLOPE_LASTS_m, transition, spread);
      const keep = Math.exp(-dt_s / WANDER_s);
      transition[8] = keep;
      spread[8] = correlated * (1 - keep * keep);
    },
    measure(k, observe) {
      const height = elevation_m[first + k];
      if (!Number.isNaN(height)) {
        value[0] = height;
        observe(row, white, value);
      }
    },
  };
}

function firstValue(elevation_m: Float64Array, first: number, last: number): number {
  for (let i = first; i < last; i++) {
    if (!Number.isNaN(elevation_m[i])) {
      return elevation_m[i];
    }
  }
  return 0;
}
