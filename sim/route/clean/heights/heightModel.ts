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
  /** Whether the correlated part has a rate of change, as where the receiver filters its own heights, or is new in every moment. */
  readonly isFiltered: boolean;
}

/**
 * Height and slope of the road by distance, and the receiver's correlated noise by time, over moments `first` to `last` of a log.
 * What tells hills from noise is that noise goes with time and hills with distance. Roads have no kinks: the slope is Matern's
 * process of order 3/2, which has a derivative; so is the noise of a receiver that filters its heights, else it is of first order. States: height, slope,
 * change of slope, noise, and the noise's rate where it has one. NaN in `elevation_m` is "not recorded".
 */
export function heightModel(
  time_s: Float64Array,
  distance_m: Float64Array,
  elevation_m: Float64Array,
  noise: HeightNoise,
  first: number,
  last: number,
): MotionModel {
  const n = noise.isFiltered ? 5 : 4;
  const row = Float64Array.of(1, 0, 0, 1, 0).slice(0, n);
  const value = new Float64Array(1);
  const white = noise.white_m ** 2;
  const correlated = noise.correlated_m ** 2;
  const variance = noise.slope_ratio ** 2;
  const lasts_m = noise.slopeLasts_m;
  const roadScale = [lasts_m, 1, 1 / lasts_m];
  const noiseScale = [1, 1 / noise.correlation_s];
  const startCovariance = new Float64Array(n * n);
  [400, variance, variance / lasts_m ** 2, correlated, correlated / noise.correlation_s ** 2]
    .slice(0, n)
    .forEach((each, a) => {
      startCovariance[a * n + a] = each;
    });
  const startMean = new Float64Array(n);
  startMean[0] = firstValue(elevation_m, first, last);
  return {
    states: n,
    axes: 1,
    events: last - first,
    startCovariance,
    startMean,
    transition(k, transition, spread) {
      const by_m = Math.max(0, distance_m[first + k] - distance_m[first + k - 1]);
      const dt_s = time_s[first + k] - time_s[first + k - 1];
      place(roadSteps(by_m / lasts_m), roadScale, variance, n, 0, transition, spread);
      if (noise.isFiltered) {
        place(noiseSteps(dt_s / noise.correlation_s), noiseScale, correlated, n, 3, transition, spread);
      } else {
        const keep = Math.exp(-dt_s / noise.correlation_s);
        transition[n * n - 1] = keep;
        spread[n * n - 1] = correlated * (1 - keep * keep);
      }
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

/** Steps as parts of the length or time that something lasts. */
const PARTS = 4096;
const roadSteps = keptSteps(PARTS, sloping);
const noiseSteps = keptSteps(PARTS, drifting);

/** Height, slope of standard deviation 1 and its change over a piece of road, a slope lasting 1: s'' = -2 s' - s + w, w of density 4. */
function sloping(by: number): StepMatrices {
  const drift = Float64Array.of(0, 1, 0, 0, 0, 1, 0, -1, -2);
  const density = new Float64Array(9);
  density[8] = 4;
  return overStep(3, drift, density, by);
}

/** Noise of standard deviation 1 and its rate over a time, the noise lasting 1: n'' = -2 n' - n + w, w of density 4. */
function drifting(by: number): StepMatrices {
  return overStep(2, Float64Array.of(0, 1, -1, -2), Float64Array.of(0, 0, 0, 4), by);
}

/** A step in units of its own into rows and columns from `at` on of matrices of width n; `scale` has the size of each state. */
function place(
  step: StepMatrices,
  scale: readonly number[],
  variance: number,
  n: number,
  at: number,
  transition: Float64Array,
  spread: Float64Array,
): void {
  const size = scale.length;
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < size; b++) {
      const to = (at + a) * n + at + b;
      transition[to] = (step.transition[a * size + b] * scale[a]) / scale[b];
      spread[to] = step.noise[a * size + b] * scale[a] * scale[b] * variance;
    }
  }
}

function firstValue(elevation_m: Float64Array, first: number, last: number): number {
  for (let i = first; i < last; i++) {
    if (!Number.isNaN(elevation_m[i])) {
      return elevation_m[i];
    }
  }
  return 0;
}
