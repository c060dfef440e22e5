import type { Parameter } from "./parameters.ts";
import { whiten } from "./whiten.ts";

/** Whitened slopes side by side, and below them what was known before: a row to a parameter. */
export function whitenedSlopes(
  slopes_J: readonly Float64Array[],
  parameters: readonly Parameter[],
  lower: Float64Array,
) {
  const count = parameters.length;
  const n = slopes_J[0].length;
  const jacobian = new Float64Array((n + count) * count);
  const columns = slopes_J.map((slope_J) => {
    const column = slope_J.slice();
    whiten(lower, column);
    return column;
  });
  columns.forEach((column, k) => {
    for (let i = 0; i < n; i++) jacobian[i * count + k] = column[i];
    jacobian[(n + k) * count + k] = 1 / parameters[k].before;
  });
  return { jacobian, columns };
}
