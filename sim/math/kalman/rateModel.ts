import { accelerationModel } from "./accelerationModel.ts";

/** Fills the transition over a step and its noise, both row-major. */
type FillRate = (step: number, spread: number, lasts: number, transition: Float64Array, noise: Float64Array) => void;

/**
 * Fills rows and columns 0 and 1 of matrices of width n for a value and a rate of it that falls back to zero by chance: speed and
 * acceleration by time, or height and slope by distance. It is the acceleration model without its first state
 * [Singer1970, eq. 4 to 8]:
 *
 *   F = [1 (1 - e)/c; 0 e],   c = 1/lasts, e = exp(-c step)
 *
 * `spread` is the standard deviation of the rate, `lasts` the step over which it holds, in the unit of `step`.
 */
export function rateModel(n: number): FillRate {
  const wholeTransition = new Float64Array(9);
  const wholeNoise = new Float64Array(9);
  return (step, spread, lasts, transition, noise) => {
    accelerationModel(step, spread, lasts, 3, wholeTransition, wholeNoise);
    takeLastTwo(wholeTransition, n, transition);
    takeLastTwo(wholeNoise, n, noise);
  };
}

/** Rows and columns 1 and 2 of a 3 x 3 matrix into rows and columns 0 and 1 of one of width n. */
function takeLastTwo(whole: Float64Array, n: number, part: Float64Array): void {
  part[0] = whole[4];
  part[1] = whole[5];
  part[n] = whole[7];
  part[n + 1] = whole[8];
}
