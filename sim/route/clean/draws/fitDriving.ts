import { SwitchingFilter } from "../../../math/kalman/switchingFilter.ts";
import { type AlongNoise, type AlongRoad, drivingModel } from "./drivingModel.ts";
import { usualAcceleration_mps2 } from "./drivingPrior.ts";

/** Factors on the accelerations of the published cycles that are tried: a very calm driver to a hard one. */
const factors_ratio = [0.25, 0.4, 0.55, 0.7, 0.85, 1, 1.2, 1.45, 1.75, 2.1];
/** What is known before the log: most drive as the cycles do, give or take this much of a factor (as a logarithm). Assumed. */
const SPREAD_LOG = 0.35;
/** Moments looked at. */
const LONGEST_FIT = 2000;

/** Spread of acceleration at each moment, as in the published cycles at these speeds, times a factor. */
export function spreadOf(speed_mps: Float64Array, factor_ratio: number): Float64Array {
  return speed_mps.map((each_mps) => factor_ratio * usualAcceleration_mps2(Math.abs(each_mps)));
}

/**
 * How lively this log is driven: the factor on the accelerations of the published cycles that is likeliest, by the filter's likelihood
 * [Kalman1960] over up to 2,000 moments in the log's middle and by what is usual. A parabola through the best three refines it.
 */
export function fitDriving(known: AlongRoad, speed_mps: Float64Array, noise: AlongNoise): number {
  const first = Math.max(0, Math.floor((known.time_s.length - LONGEST_FIT) / 2));
  const last = Math.min(known.time_s.length, first + LONGEST_FIT);
  const tried = factors_ratio.map((factor) => {
    const filter = new SwitchingFilter(drivingModel(known, spreadOf(speed_mps, factor), noise, { first, last }));
    for (let k = 0; k < last - first; k++) filter.step(k);
    return filter.logLikelihood - 0.5 * (Math.log(factor) / SPREAD_LOG) ** 2;
  });
  let best = 0;
  tried.forEach((value, i) => {
    best = value > tried[best] ? i : best;
  });
  if (best === 0 || best === tried.length - 1) return factors_ratio[best];
  const at = [best - 1, best, best + 1].map((i) => Math.log(factors_ratio[i]));
  return Math.exp(crest(at, tried.slice(best - 1, best + 2)));
}

/** Where the parabola through three points is highest. */
function crest(x: readonly number[], y: readonly number[]): number {
  const left = (y[1] - y[0]) / (x[1] - x[0]);
  const right = (y[2] - y[1]) / (x[2] - x[1]);
  const bend = (right - left) / (x[2] - x[0]);
  return bend < 0 ? 0.5 * (x[0] + x[1]) - left / (2 * bend) : x[1];
}
