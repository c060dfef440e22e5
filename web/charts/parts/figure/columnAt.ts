import { bisectLeft, bisectRight } from "d3-array";

/** Value of `y` at `x = at`, on the straight line between the rows around it; the end values beyond the ends. */
export function lineAt(x: ArrayLike<number>, y: ArrayLike<number>, length: number, at: number): number {
  if (length === 0) return Number.NaN;
  const after = bisectRight(x, at, 0, length);
  if (after === 0) return y[0] as number;
  if (after === length) return y[length - 1] as number;
  const x0 = x[after - 1] as number;
  const x1 = x[after] as number;
  const y0 = y[after - 1] as number;
  return y0 + (((y[after] as number) - y0) * (at - x0)) / (x1 - x0);
}

/** Row of the interval that holds `at`: row i is the end of interval i. Row 0 at and before the start. */
export function intervalAt(x: ArrayLike<number>, length: number, at: number): number {
  return Math.min(bisectLeft(x, at, 0, length), length - 1);
}
