import { accelerationModel } from "./accelerationModel.ts";
import { smooth } from "./smoother.ts";
import { withoutDistance } from "./smoothSpeed.ts";

/** Slopes of roads hold over some hundreds of metres. Assumed: 300 m, about the length of a street's one gradient. */
const SLOPE_LASTS_m = 300;
/** The receiver's height wanders with a time constant of about a minute. Assumed. */
const WANDER_s = 60;
/** Standard deviations that are tried: of slope (flat country to mountains), of each fix, of the wander. */
const slopes_ratio = [0.001, 0.004, 0.012, 0.03, 0.06];
const whites_m = [0.3, 1, 3, 6];
const wanders_m = [0.3, 3, 8];
/** So few heights cannot show that a road is flat; then it is not taken to be. */
const SCARCE = 300;
const hillySlopes_ratio = slopes_ratio.filter((slope) => slope > 0.01);
const LONGEST_FIT = 1800;

/** How a log's heights scatter, as fits the log best. */
export interface HeightNoise {
  readonly slope_ratio: number;
  readonly white_m: number;
  readonly wandering_m: number;
}

/**
 * The noise under which the heights are likeliest, by the innovations of the filter below. So a flat road stays flat
 * under a noisy receiver, and hills stay hills: what tells them apart is that noise goes with time and hills with distance.
 */
export function fitHeightNoise(time_s: Float64Array, distance_m: Float64Array, height_m: Float64Array): HeightNoise {
  const first = Math.max(0, Math.floor((time_s.length - LONGEST_FIT) / 2));
  const last = Math.min(time_s.length, first + LONGEST_FIT);
  const isScarce = countValues(height_m, first, last) < SCARCE;
  const slopes = isScarce ? hillySlopes_ratio : slopes_ratio;
  const tried = new Map<string, number>();
  const likelihood = (slope: number, white: number, wander: number): number => {
    const key = `${slope},${white},${wander}`;
    const known = tried.get(key);
    if (known !== undefined) {
      return known;
    }
    const noise = { slope_ratio: slopes[slope], white_m: whites_m[white], wandering_m: wanders_m[wander] };
    const { logLikelihood } = run(time_s, distance_m, height_m, noise, first, last, false);
    tried.set(key, logLikelihood);
    return logLikelihood;
  };
  // One quantity after another until none moves: a third of the runs of trying all, and the same answer in practice.
  let [slope, white, wander] = [Math.floor(slopes.length / 2), 1, 1];
  for (let round = 0; round < 4; round++) {
    const before = `${slope},${white},${wander}`;
    white = best(whites_m.length, (k) => likelihood(slope, k, wander));
    wander = best(wanders_m.length, (k) => likelihood(slope, white, k));
    slope = best(slopes.length, (k) => likelihood(k, white, wander));
    if (before === `${slope},${white},${wander}`) {
      break;
    }
  }
  return { slope_ratio: slopes[slope], white_m: whites_m[white], wandering_m: wanders_m[wander] };
}

/** Index from 0 to n - 1 at which the value is largest. */
function best(n: number, value: (k: number) => number): number {
  let found = 0;
  for (let k = 1; k < n; k++) {
    found = value(k) > value(found) ? k : found;
  }
  return found;
}

const CHUNK = 16384;
const OVERLAP = 1024;

/**
 * Height of the road at every moment, from heights logged at some (NaN: not logged), smoothed along distance: a Kalman
 * filter with backward smoothing over height and slope by distance, and the receiver's wander by time. Where the car
 * stands the height stands.
 */
export function smoothHeight(
  time_s: Float64Array,
  distance_m: Float64Array,
  height_m: Float64Array,
  noise: HeightNoise,
): Float64Array {
  const n = time_s.length;
  const result = new Float64Array(n);
  for (let from = 0; from < n; from += CHUNK) {
    const to = Math.min(n, from + CHUNK);
    const first = Math.max(0, from - OVERLAP);
    const { mean } = run(time_s, distance_m, height_m, noise, first, Math.min(n, to + OVERLAP), true);
    for (let i = from; i < to; i++) {
      result[i] = mean[(i - first) * 3];
    }
  }
  return result;
}

function run(
  time_s: Float64Array,
  distance_m: Float64Array,
  height_m: Float64Array,
  noise: HeightNoise,
  first: number,
  last: number,
  backward: boolean,
) {
  const row = Float64Array.of(1, 0, 1);
  const value = new Float64Array(1);
  const white = noise.white_m ** 2;
  const wander = noise.wandering_m ** 2;
  const whole = new Float64Array(9);
  const wholeSpread = new Float64Array(9);
  const part = new Float64Array(4);
  const start = firstValue(height_m, first, last);
  return smooth(
    {
      states: 3, // height, slope, wander
      axes: 1,
      events: last - first,
      startCovariance: Float64Array.of(400, 0, 0, 0, noise.slope_ratio ** 2, 0, 0, 0, wander),
      startMean: Float64Array.of(start, 0, 0),
      transition(k, transition, spread) {
        const by_m = Math.max(0, distance_m[first + k] - distance_m[first + k - 1]);
        const dt_s = time_s[first + k] - time_s[first + k - 1];
        accelerationModel(by_m, noise.slope_ratio, SLOPE_LASTS_m, 3, whole, wholeSpread);
        withoutDistance(whole, part);
        place(part, transition);
        withoutDistance(wholeSpread, part);
        place(part, spread);
        const keep = Math.exp(-dt_s / WANDER_s);
        transition[8] = keep;
        spread[8] = wander * (1 - keep * keep);
      },
      measure(k, observe) {
        const height = height_m[first + k];
        if (!Number.isNaN(height)) {
          value[0] = height;
          observe(row, white, value);
        }
      },
    },
    backward,
  );
}

/** A 2 x 2 matrix into the upper left of a 3 x 3. */
function place(part: Float64Array, whole: Float64Array): void {
  whole[0] = part[0];
  whole[1] = part[1];
  whole[3] = part[2];
  whole[4] = part[3];
}

function firstValue(height_m: Float64Array, first: number, last: number): number {
  for (let i = first; i < last; i++) {
    if (!Number.isNaN(height_m[i])) {
      return height_m[i];
    }
  }
  return 0;
}

function countValues(column: Float64Array, first: number, last: number): number {
  let count = 0;
  for (let i = first; i < last; i++) {
    count += Number.isNaN(column[i]) ? 0 : 1;
  }
  return count;
}
