import type { MotionModel } from "../../../math/kalman/motionModel.ts";
import { rateModel } from "../../../math/kalman/rateModel.ts";

/** A push of the driver's foot holds for some seconds. Assumed. */
export const ACCELERATION_LASTS_s = 3;
/** Standing is no speed to within this. */
const STANDING_mps = 0.02;

/** Noise of a log's recorded speed and acceleration noise of its driving, as fit the log best. */
export interface SpeedNoise {
  readonly noise_mps: number;
  readonly acceleration_mps2: number;
}

/** States of the model: speed, acceleration. */
export const SPEED_STATES = 2;

/** What is known beside the speeds: where the car stands, by moment of the log, and how lively it is, by moment of the model. */
interface KnownOfDriving {
  readonly isStanding?: Uint8Array;
  readonly accelerationNoise_mps2?: Float64Array;
}

/**
 * Speed and acceleration by time over moments `first` to `last` of a log; standing moments are measured at 0. NaN in
 * `speed_mps` is "not recorded".
 */
export function speedModel(
  time_s: Float64Array,
  speed_mps: Float64Array,
  noise: SpeedNoise,
  first: number,
  last: number,
  { isStanding, accelerationNoise_mps2 }: KnownOfDriving = {},
): MotionModel {
  const row = Float64Array.of(1, 0);
  const value = new Float64Array(1);
  const zero = new Float64Array(1);
  const variance = noise.noise_mps ** 2;
  const fillAcceleration = rateModel(SPEED_STATES);
  return {
    states: SPEED_STATES,
    axes: 1,
    events: last - first,
    startCovariance: Float64Array.of(400, 0, 0, noise.acceleration_mps2 ** 2),
    startMean: new Float64Array(SPEED_STATES),
    transition(k, transition, spread) {
      const dt_s = time_s[first + k] - time_s[first + k - 1];
      const acceleration_mps2 = accelerationNoise_mps2?.[k] ?? noise.acceleration_mps2;
      fillAcceleration(dt_s, acceleration_mps2, ACCELERATION_LASTS_s, transition, spread);
    },
    measure(k, observe) {
      const i = first + k;
      if (isStanding?.[i]) {
        observe(row, STANDING_mps ** 2, zero);
      } else if (!Number.isNaN(speed_mps[i])) {
        value[0] = speed_mps[i];
        observe(row, variance, value);
      }
    },
  };
}
