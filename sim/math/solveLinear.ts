/**
 * The solution of a few linear equations, by Gauss elimination with row pivoting; nothing where the matrix is singular to rounding (its
 * rows should be of size one).
 */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
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
