import { smooth } from "../../../math/kalman/smooth.ts";
import { type SpeedNoise, speedModel } from "./speedModel.ts";

/**
 * Standard deviations of recorded speed that are tried: a receiver's Doppler speed in the open is good to 0.05 to
 * 0.1 m/s (from memory, unconfirmed), a dashboard's whole km/h to 0.08, a telephone's in a street to a few tenths.
 */
const noises_mps = [0.05, 0.1, 0.15, 0.25, 0.4, 0.7];
/** Standard deviations of acceleration that are tried: a calm road to hard town driving. */
const accelerations_mps2 = [0.4, 0.7, 1, 1.4];
const LONGEST_FIT = 4000;

/** What a log without recorded speeds is given, and where the search begins. Assumed: an ordinary telephone. */
export const usualSpeedNoise: SpeedNoise = { noise_mps: 0.15, acceleration_mps2: 1 };

/**
 * The pair of noise and acceleration under which the recorded speeds are likeliest [Kalman1960], by the
 * innovations of the filter over up to 4,000 moments of moving. NaN in `speed_mps` is "not recorded".
 */
export function fitSpeedNoise(time_s: Float64Array, speed_mps: Float64Array): SpeedNoise {
  const n = Math.min(time_s.length, LONGEST_FIT);
  const first = Math.max(0, Math.floor((time_s.length - n) / 2));
  let best = usualSpeedNoise;
  let most = Number.NEGATIVE_INFINITY;
  for (const noise_mps of noises_mps) {
    for (const acceleration_mps2 of accelerations_mps2) {
      const candidate = { noise_mps, acceleration_mps2 };
      const { logLikelihood } = smooth(speedModel(time_s, speed_mps, candidate, first, first + n), false);
      if (logLikelihood > most) {
        most = logLikelihood;
        best = candidate;
      }
    }
  }
  return best;
}
