import { keptSteps } from "../../../math/kalman/keptSteps.ts";
import type { MotionModel } from "../../../math/kalman/motionModel.ts";
import { overStep, type StepMatrices } from "../../../math/kalman/overStep.ts";

/** How a log's heights scatter, as fits the log best. */
export interface HeightNoise {
  /** Standard deviation of slope, and the length over which a slope holds: its correlation goes as (1 + d/L) exp(-d/L). */
  readonly slope_ratio: number;
  readonly slopeLasts_m: number;
  readonly white_m: number;
  readonly correlated_m: number;
  /** Time constant of the correlated part: about a minute for satellites in a street, many for a barometer in the weather. */
  readonly correlation_s: number;
}

/** States of the model: height, slope, change of slope, correlated noise. */
export const HEIGHT_STATES = 4;

/**
 * Height and slope of the road by distance, and the receiver's correlated noise by time, over moments `first` to `last` of a log.
 * What tells hills from noise is that noise goes with time and hills with distance. Roads have no kinks: the slope is Matern's
 * process of order 3/2, which has a derivative. NaN in `elevation_m` is "not recorded".
 */
export function heightModel(
  time_s: Float64Array,
  distance_m: Float64Array,
  elevation_m: Float64Array,
  noise: HeightNoise,
  first: number,
  last: number,
): MotionModel {
  const n = HEIGHT_STATES;
  const row = Float64Array.of(1, 0, 0, 1);
  const value = new Float64Array(1);
  const white = noise.white_m ** 2;
  const correlated = noise.correlated_m ** 2;
  const variance = noise.slope_ratio ** 2;
  const lasts_m = noise.slopeLasts_m;
  const stepOf = stepsOver(lasts_m);
  const startCovariance = new Float64Array(n * n);
  [400, variance, variance / lasts_m ** 2, correlated].forEach((each, a) => {
    startCovariance[a * n + a] = each;
  });
  return {
    states: n,
    axes: 1,
    events: last - first,
    startCovariance,
    startMean: Float64Array.of(firstValue(elevation_m, first, last), 0, 0, 0),
    transition(k, transition, spread) {
      const by_m = Math.max(0, distance_m[first + k] - distance_m[first + k - 1]);
      const dt_s = time_s[first + k] - time_s[first + k - 1];
      const step = stepOf(by_m);
      for (let a = 0; a < 3; a++) {
        for (let b = 0; b < 3; b++) {
          transition[a * n + b] = step.transition[a * 3 + b];
          spread[a * n + b] = step.noise[a * 3 + b] * variance;
        }
      }
      const keep = Math.exp(-dt_s / noise.correlation_s);
      transition[n * n - 1] = keep;
      spread[n * n - 1] = correlated * (1 - keep * keep);
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

/** A slope may hold for any length, but few are tried: as many are kept. */
const MOST_LENGTHS = 8;
const byLength = new Map<number, (by_m: number) => StepMatrices>();

/** Steps of every length in tenths of a metre, where a slope lasts so long. */
function stepsOver(lasts_m: number): (by_m: number) => StepMatrices {
  const known = byLength.get(lasts_m);
  if (known) return known;
  if (byLength.size >= MOST_LENGTHS) byLength.clear();
  const made = keptSteps(10, (by_m) => sloping(by_m, lasts_m));
  byLength.set(lasts_m, made);
  return made;
}

/** Height, slope of standard deviation 1 and its change over a piece of road: s'' = -2 s'/L - s/L^2 + w, w of density 4/L^3. */
function sloping(by_m: number, lasts_m: number): StepMatrices {
  const drift = Float64Array.of(0, 1, 0, 0, 0, 1, 0, -1 / lasts_m ** 2, -2 / lasts_m);
  const density = new Float64Array(9);
  density[8] = 4 / lasts_m ** 3;
  return overStep(3, drift, density, by_m);
}

function firstValue(elevation_m: Float64Array, first: number, last: number): number {
  for (let i = first; i < last; i++) {
    if (!Number.isNaN(elevation_m[i])) {
      return elevation_m[i];
    }
  }
  return 0;
}
