import { climbed } from "../../../math/kalman/climbed.ts";
import { SwitchingFilter } from "../../../math/kalman/switchingFilter.ts";
import { type AlongNoise, type AlongRoad, drivingModel } from "./drivingModel.ts";
import { usualAcceleration_mps2 } from "./drivingPrior.ts";

/** Factors on the accelerations of the published cycles that are tried: a very calm driver to a hard one. */
const factors_ratio = [0.25, 0.4, 0.6, 0.8, 1, 1.3, 1.7, 2.2];
/** What is known before the log: most drive as the cycles do, give or take this much of a factor (as a logarithm). Assumed. */
const SPREAD_LOG = 0.35;
/** Noise of recorded speeds that is tried: whole km/h scatter by 0.08, a telephone in a street by a few tenths. */
const speedNoises_mps = [0.05, 0.1, 0.15, 0.22, 0.35, 0.7];
/** Noise of a position along the road that is tried, no less than that of the fix itself: bends and corners between fixes add to it. */
const waysOff_m = [0, 1, 2, 4];
/** Correlated noise of positions that is tried where they are too far apart to show it by themselves. */
const correlated_m = [1.5, 3, 5, 8, 12];
/** That is about the assumed, give or take this much of a factor (as a logarithm). Assumed. */
const CORRELATED_LOG = 0.5;
/** Moments looked at. */
const LONGEST_FIT = 2000;

/** Spread of acceleration at each moment, as in the published cycles at these speeds or in the one whose bands are given, times a factor. */
export function spreadOf(speed_mps: Float64Array, factor_ratio: number, bands_mps2?: readonly number[]): Float64Array {
  return speed_mps.map((each_mps) => factor_ratio * usualAcceleration_mps2(Math.abs(each_mps), bands_mps2));
}

/** What a log shows of its driver, of its recorded speeds and of its positions along the road. */
interface FittedDriving {
  readonly factor_ratio: number;
  readonly noise: AlongNoise;
}

/** What there is to fit. */
interface Fitted {
  readonly hasSpeeds: boolean;
  /** False where the log cannot show how lively it is driven: then it is driven as the published cycles are. */
  readonly showsDriving: boolean;
  /** False where the positions' noise is only assumed. */
  readonly showsPositionNoise: boolean;
  /** Accelerations by band of the cycle that the log is held to be driven like; of all cycles where there is none. */
  readonly bands_mps2: readonly number[] | undefined;
}

/**
 * How lively this log is driven and how its speeds and positions scatter: the factor on the accelerations of the published cycles and the
 * noise that are likeliest, by the filter's likelihood [Kalman1960] over up to 2,000 moments in the log's middle and by what is usual. A
 * parabola through the best three refines the factor. Noise and factor are fitted in turn: what bends and corners do to positions laid
 * along the road would else be taken for a lively driver.
 */
export function fitDriving(
  known: AlongRoad,
  speed_mps: Float64Array,
  noise: AlongNoise,
  { hasSpeeds, showsDriving, showsPositionNoise, bands_mps2 }: Fitted,
): FittedDriving {
  const first = Math.max(0, Math.floor((known.time_s.length - LONGEST_FIT) / 2));
  const last = Math.min(known.time_s.length, first + LONGEST_FIT);
  const likelihood = (factor_ratio: number, scatter: AlongNoise): number => {
    const model = drivingModel(known, spreadOf(speed_mps, factor_ratio, bands_mps2), scatter, { first, last });
    const filter = new SwitchingFilter(model);
    for (let k = 0; k < last - first; k++) filter.step(k);
    const isUnusual =
      (Math.log(factor_ratio) / SPREAD_LOG) ** 2 +
      (Math.log(scatter.correlated_m / noise.correlated_m) / CORRELATED_LOG) ** 2;
    return filter.logLikelihood - 0.5 * isUnusual;
  };
  const tried = {
    correlated_m: showsPositionNoise ? [noise.correlated_m] : correlated_m,
    speed_mps: hasSpeeds ? speedNoises_mps : [noise.speed_mps],
    white_m: waysOff_m.map((each) => Math.max(noise.white_m, each)),
    factor_ratio: showsDriving ? factors_ratio : [1],
  };
  const at = ({ factor_ratio, ...scatter }: Record<keyof typeof tried, number>) =>
    likelihood(factor_ratio, { ...noise, ...scatter });
  const start = {
    factor_ratio: 1,
    speed_mps: noise.speed_mps,
    correlated_m: noise.correlated_m,
    white_m: noise.white_m,
  };
  const { factor_ratio, ...scatter } = climbed(start, tried, at);
  const found = { ...noise, ...scatter };
  return { factor_ratio: showsDriving ? crestAbout(factor_ratio, (each) => likelihood(each, found)) : 1, noise: found };
}

/** The factor at the crest of the likelihoods of the likeliest of those tried and its neighbours. */
function crestAbout(factor_ratio: number, likelihood: (factor_ratio: number) => number): number {
  const best = factors_ratio.indexOf(factor_ratio);
  if (best <= 0 || best === factors_ratio.length - 1) return factor_ratio;
  const near = factors_ratio.slice(best - 1, best + 2);
  return Math.exp(crest(near.map(Math.log), near.map(likelihood)));
}

/** Where the parabola through three points is highest. */
function crest(x: readonly number[], y: readonly number[]): number {
  const left = (y[1] - y[0]) / (x[1] - x[0]);
  const right = (y[2] - y[1]) / (x[2] - x[1]);
  const bend = (right - left) / (x[2] - x[0]);
  return bend < 0 ? 0.5 * (x[0] + x[1]) - left / (2 * bend) : x[1];
}
