import { choleskyFactor, choleskySolve } from "../../math/cholesky.ts";
import { climbed } from "../../math/kalman/climbed.ts";
import { type DriveErrors, type EnergyErrors, EVER, factorOf } from "./energyErrors.ts";
import { whiten } from "./whiten.ts";

/** How far the energies of segments are off, as what is left of their differences shows it. */
export interface LikelyErrors {
  /** Lower Cholesky factor of their covariance, n by n. */
  readonly lower: Float64Array;
  readonly size: DriveErrors;
  /** What samples and clocks leave open over what it was taken to be. */
  readonly scale: number;
}

/** Errors of motion and model that are tried, over the scale of all else. */
const tried = {
  elevation_m: [0.03, 0.3, 0.7, 1.5, 3, 6, 12, 25],
  lasts_s: [15, 35, 70, 150, EVER],
  lasts_m: [150, 400, 1000, 2500, EVER],
  speed_mps: [0.01, 0.05, 0.1, 0.2, 0.4],
  model_frac: [0.005, 0.015, 0.03, 0.06],
};
/** Nothing is known better than this share of what was assumed. */
const LEAST_ratio = 0.1;

/**
 * The errors under which what is left of the differences is likeliest, the values that were fitted to them taken as unknown (restricted
 * likelihood [PattersonThompson1971, eq. 5]):
 *
 *   -2 log L = (n - p) log s² + S / s² + log |M| + log |JᵀM⁻¹J|,   S = rᵀ (M⁻¹ - M⁻¹J (JᵀM⁻¹J)⁻¹ JᵀM⁻¹) r,   s² = S / (n - p)
 *
 * with M the covariance but for its scale s, J the slopes by the fitted values, n by p. A receiver's height and a barometer's differ tenfold,
 * and no log says which it is; the energies it leaves do.
 */
export function likelyErrors(
  errors: EnergyErrors,
  left_J: Float64Array,
  slopes_J: readonly Float64Array[],
): LikelyErrors {
  const to = Math.min(errors.count, MOST);
  const some = firstOf(errors, to);
  const scaled = (size: DriveErrors) =>
    scaledBy(
      some,
      size,
      left_J.subarray(0, to),
      slopes_J.map((slope_J) => slope_J.subarray(0, to)),
    );
  const start = Object.fromEntries(
    Object.entries(tried).map(([key, values]) => [key, nearest(values, errors.usual[key as keyof DriveErrors])]),
  ) as Record<keyof DriveErrors, number>;
  const likeliest = climbed(start, tried, (each) => scaled(each).likelihood);
  const { scale } = scaled(likeliest);
  const lower = factorOf(errors, likeliest);
  return {
    lower: lower.map((each) => scale * each),
    size: {
      ...likeliest,
      elevation_m: scale * likeliest.elevation_m,
      speed_mps: scale * likeliest.speed_mps,
      model_frac: scale * likeliest.model_frac,
    },
    scale,
  };
}

/** So many segments, two hours of driving, show how good a log is; more would take minutes. */
const MOST = 300;

function firstOf(errors: EnergyErrors, count: number): EnergyErrors {
  if (count === errors.count) return errors;
  const restSquared = new Float64Array(count * count);
  for (let s = 0; s < count; s++)
    restSquared.set(errors.restSquared.subarray(s * errors.count, s * errors.count + count), s * count);
  return { ...errors, count, restSquared };
}

function scaledBy(errors: EnergyErrors, size: DriveErrors, left_J: Float64Array, slopes_J: readonly Float64Array[]) {
  const [n, p] = [errors.count, slopes_J.length];
  const lower = factorOf(errors, size);
  const white = (column: Float64Array) => {
    const copy = column.slice();
    whiten(lower, copy);
    return copy;
  };
  const left = white(left_J);
  const slopes = slopes_J.map(white);
  const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, each, i) => sum + each * b[i], 0);
  const normal = new Float64Array(p * p);
  for (let k = 0; k < p; k++) for (let l = 0; l < p; l++) normal[k * p + l] = dot(slopes[k], slopes[l]);
  const right = Float64Array.from(slopes, (slope) => dot(slope, left));
  choleskyFactor(p, normal);
  const step = right.slice();
  choleskySolve(p, normal, step);
  const degrees = Math.max(1, n - p);
  const sum = Math.max(0, dot(left, left) - dot(right, step));
  const scale = Math.max(LEAST_ratio, Math.sqrt(sum / degrees));
  let logs = 2 * degrees * Math.log(scale) + sum / scale ** 2;
  for (let i = 0; i < n; i++) logs += 2 * Math.log(lower[i * n + i]);
  for (let k = 0; k < p; k++) logs += 2 * Math.log(normal[k * p + k]);
  return { lower, scale, likelihood: -0.5 * logs };
}

function nearest(values: readonly number[], wanted: number): number {
  return values.reduce((best, each) => (Math.abs(each - wanted) < Math.abs(best - wanted) ? each : best));
}
