import { accelerationModel } from "./accelerationModel.ts";
import { liveliness_mps2 } from "./liveliness.ts";
import { smooth } from "./smoother.ts";

/** Moments smoothed at once, and the overlap after which the ends no longer matter. */
const CHUNK = 16384;
const OVERLAP = 256;
/**
 * Standard deviations of recorded speed that are tried: a receiver's Doppler speed in the open is good to 0.05 to
 * 0.1 m/s (from memory, unconfirmed), a dashboard's whole km/h to 0.08, a telephone's in a street to a few tenths.
 */
const noises_mps = [0.05, 0.1, 0.15, 0.25, 0.4, 0.7];
/** Standard deviations of acceleration that are tried: a calm road to hard town driving. */
const accelerations_mps2 = [0.4, 0.7, 1, 1.4];
const ACCELERATION_LASTS_s = 3;

/** Noise of a log's recorded speed and liveliness of its driving, as fit the log best. */
export interface SpeedNoise {
  readonly noise_mps: number;
  readonly acceleration_mps2: number;
}

/**
 * The pair of noise and acceleration under which the recorded speeds are likeliest [Kalman1960], by the
 * innovations of the filter over up to 4,000 moments of moving. NaN in `speed_mps` is "not recorded".
 */
export function fitSpeedNoise(time_s: Float64Array, speed_mps: Float64Array): SpeedNoise {
  const n = Math.min(time_s.length, 4000);
  const first = Math.max(0, Math.floor((time_s.length - n) / 2));
  let best: SpeedNoise = { noise_mps: 0.15, acceleration_mps2: 1 };
  let most = Number.NEGATIVE_INFINITY;
  for (const noise_mps of noises_mps) {
    for (const acceleration_mps2 of accelerations_mps2) {
      const candidate = { noise_mps, acceleration_mps2 };
      const { logLikelihood } = run(time_s, speed_mps, undefined, candidate, first, first + n, false);
      if (logLikelihood > most) {
        most = logLikelihood;
        best = candidate;
      }
    }
  }
  return best;
}

/**
 * Speed at every moment from speeds recorded at some, by a Kalman filter with backward smoothing over speed and
 * acceleration; where speeds were recorded about every second, done twice, the second time with the liveliness that the
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
  for (let from = 0; from < n; from += CHUNK) {
    const to = Math.min(n, from + CHUNK);
    const first = Math.max(0, from - OVERLAP);
    const last = Math.min(n, to + OVERLAP);
    let { mean } = run(time_s, speed_mps, isStanding, noise, first, last, true);
    if (isDense(speed_mps, first, last)) {
      const once = mean;
      const times_s = time_s.subarray(first, last);
      const acceleration_mps2 = (k: number) => once[2 * k + 1];
      const liveliness = liveliness_mps2(times_s, acceleration_mps2, noise.acceleration_mps2, ACCELERATION_LASTS_s);
      mean = run(time_s, speed_mps, isStanding, noise, first, last, true, liveliness).mean;
    }
    for (let i = from; i < to; i++) {
      result[i] = mean[(i - first) * 2];
    }
  }
  return result;
}

/** Whether at least every other moment has a speed: between fewer, smoothing makes calm what nobody has seen. */
function isDense(speed_mps: Float64Array, first: number, last: number): boolean {
  let known = 0;
  for (let i = first; i < last; i++) {
    known += Number.isNaN(speed_mps[i]) ? 0 : 1;
  }
  return 2 * known >= last - first;
}

function run(
  time_s: Float64Array,
  speed_mps: Float64Array,
  isStanding: Uint8Array | undefined,
  noise: SpeedNoise,
  first: number,
  last: number,
  backward: boolean,
  liveliness?: Float64Array,
) {
  const speedRow = Float64Array.of(1, 0);
  const value = new Float64Array(1);
  const zero = new Float64Array(1);
  const variance = noise.noise_mps ** 2;
  const whole = new Float64Array(9);
  const wholeSpread = new Float64Array(9);
  return smooth(
    {
      states: 2,
      axes: 1,
      events: last - first,
      startCovariance: Float64Array.of(400, 0, 0, noise.acceleration_mps2 ** 2),
      startMean: new Float64Array(2),
      transition(k, transition, spread) {
        const dt_s = time_s[first + k] - time_s[first + k - 1];
        accelerationModel(
          dt_s,
          liveliness?.[k] ?? noise.acceleration_mps2,
          ACCELERATION_LASTS_s,
          3,
          whole,
          wholeSpread,
        );
        withoutDistance(whole, transition);
        withoutDistance(wholeSpread, spread);
      },
      measure(k, observe) {
        const i = first + k;
        if (isStanding?.[i]) {
          observe(speedRow, 4e-4, zero); // 0.02 m/s
        } else if (!Number.isNaN(speed_mps[i])) {
          value[0] = speed_mps[i];
          observe(speedRow, variance, value);
        }
      },
    },
    backward,
  );
}

/** Rows and columns 1 and 2 of a 3 x 3 matrix. */
export function withoutDistance(whole: Float64Array, part: Float64Array): void {
  part[0] = whole[4];
  part[1] = whole[5];
  part[2] = whole[7];
  part[3] = whole[8];
}
