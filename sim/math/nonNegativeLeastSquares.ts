import { solveLinear } from "./solveLinear.ts";

/**
 * Coefficients x >= 0 that make rows · x nearest to the targets in the least-squares sense; for a handful of unknowns.
 *
 * Every subset of unknowns left above zero is solved by its normal equations (columns scaled to unit length) and the
 * best feasible one kept: with n unknowns 2^n small solves, exact where an iteration would need a tolerance.
 * The conditions for a minimum are those of [LawsonHanson1974, ch. 23]. All-zero columns get coefficient 0.
 */
export function nonNegativeLeastSquares(rows: readonly (readonly number[])[], targets: readonly number[]): number[] {
  const n = rows[0].length;
  const scale = Array.from(
    { length: n },
    (_, j) => Math.sqrt(rows.reduce((sum, row) => sum + row[j] * row[j], 0)) || 1,
  );
  const gram = Array.from({ length: n }, (_, j) =>
    Array.from({ length: n }, (_, k) => rows.reduce((sum, row) => sum + row[j] * row[k], 0) / (scale[j] * scale[k])),
  );
  const moments = Array.from(
    { length: n },
    (_, j) => rows.reduce((sum, row, i) => sum + row[j] * targets[i], 0) / scale[j],
  );
  let best = new Array<number>(n).fill(0);
  let bestDrop = 0; // how far the sum of squares falls below that of x = 0
  for (let mask = 1; mask < 1 << n; mask++) {
    const kept = Array.from({ length: n }, (_, j) => j).filter((j) => mask & (1 << j));
    const part = solveLinear(
      kept.map((j) => kept.map((k) => gram[j][k])),
      kept.map((j) => moments[j]),
    );
    if (!part?.every((value) => value >= 0)) continue;
    const drop = kept.reduce((sum, j, at) => sum + part[at] * moments[j], 0);
    if (drop > bestDrop) {
      bestDrop = drop;
      best = new Array<number>(n).fill(0);
      kept.forEach((j, at) => {
        best[j] = part[at] / scale[j];
      });
    }
  }
  return best;
}
