import { overlappingChunks } from "../../../math/kalman/overlappingChunks.ts";
import { smooth } from "../../../math/kalman/smooth.ts";
import { countValues } from "../rows/countValues.ts";
import { accelerationNoise_mps2 } from "./accelerationNoise.ts";
import { ACCELERATION_LASTS_s, SPEED_STATES, type SpeedNoise, speedModel } from "./speedModel.ts";

/** Moments on each side after which the ends no longer matter. */
const OVERLAP = 256;

/**
 * Speed at every moment from speeds recorded at some, by a Kalman filter with backward smoothing over speed and
 * acceleration; where speeds were recorded about every second, done twice, the second time with the acceleration noise that the
 * first one finds around each moment. Standing moments are held at 0. The result may lie a little below 0 beside a stop; the caller holds it.
 */
export function smoothSpeed(
  time_s: Float64Array,
  speed_mps: Float64Array,
  isStanding: Uint8Array,
  noise: SpeedNoise,
): Float64Array {
  const n = time_s.length;
  const result = new Float64Array(n);
  for (const { from, to, first, last } of overlappingChunks(n, OVERLAP)) {
    const once = smooth(speedModel(time_s, speed_mps, noise, first, last, { isStanding })).mean;
    let mean = once;
    if (isDense(speed_mps, first, last)) {
      const acceleration_mps2 = (k: number) => once[SPEED_STATES * k + 1];
      const lively_mps2 = accelerationNoise_mps2(
        time_s.subarray(first, last),
        acceleration_mps2,
        noise.acceleration_mps2,
        ACCELERATION_LASTS_s,
      );
      const known = { isStanding, accelerationNoise_mps2: lively_mps2 };
      mean = smooth(speedModel(time_s, speed_mps, noise, first, last, known)).mean;
    }
    for (let i = from; i < to; i++) {
      result[i] = mean[(i - first) * SPEED_STATES];
    }
  }
  return result;
}

/** Whether at least every other moment has a speed: between fewer, smoothing makes calm what nobody has seen. */
function isDense(speed_mps: Float64Array, first: number, last: number): boolean {
  return 2 * countValues(speed_mps, first, last) >= last - first;
}
