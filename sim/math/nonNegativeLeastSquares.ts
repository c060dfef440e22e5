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
    const part = solve(
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

/** Gauss elimination with row pivoting; nothing where the matrix is singular to rounding. */
function solve(matrix: number[][], right: number[]): number[] | undefined {
  const n = right.length;
  const a = matrix.map((row, i) => [...row, right[i]]);
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let i = column + 1; i < n; i++) if (Math.abs(a[i][column]) > Math.abs(a[pivot][column])) pivot = i;
    if (Math.abs(a[pivot][column]) < 1e-13) return undefined;
    [a[column], a[pivot]] = [a[pivot], a[column]];
    for (let i = column + 1; i < n; i++) {
      const factor = a[i][column] / a[column][column];
      for (let k = column; k <= n; k++) a[i][k] -= factor * a[column][k];
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let rest = a[i][n];
    for (let k = i + 1; k < n; k++) rest -= a[i][k] * x[k];
    x[i] = rest / a[i][i];
  }
  return x;
}
