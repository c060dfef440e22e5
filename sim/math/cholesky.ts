/** Cholesky factor of a symmetric matrix into the lower half, in place; a pivot lost to rounding is lifted just above zero. */
export function choleskyFactor(n: number, matrix: Float64Array): void {
  for (let j = 0; j < n; j++) {
    const diagonal = matrix[j * n + j];
    let pivot = diagonal;
    for (let l = 0; l < j; l++) {
      pivot -= matrix[j * n + l] * matrix[j * n + l];
    }
    const root = Math.sqrt(Math.max(pivot, 1e-13 * diagonal + 1e-30));
    matrix[j * n + j] = root;
    for (let i = j + 1; i < n; i++) {
      let sum = matrix[i * n + j];
      for (let l = 0; l < j; l++) {
        sum -= matrix[i * n + l] * matrix[j * n + l];
      }
      matrix[i * n + j] = sum / root;
    }
  }
}

/** Solves L L' x = right side for the lower factor L, in place of the right side: forward, then back. */
export function choleskySolve(n: number, lower: Float64Array, x: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = x[i];
    for (let l = 0; l < i; l++) {
      sum -= lower[i * n + l] * x[l];
    }
    x[i] = sum / lower[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i];
    for (let l = i + 1; l < n; l++) {
      sum -= lower[l * n + i] * x[l];
    }
    x[i] = sum / lower[i * n + i];
  }
}
