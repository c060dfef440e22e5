/** Divides what is observed by how far it may be off, correlations taken out: solves L x = r in place, L lower, n by n. */
export function whiten(lower: Float64Array, residuals: Float64Array): void {
  const n = residuals.length;
  for (let i = 0; i < n; i++) {
    let sum = residuals[i];
    for (let l = 0; l < i; l++) sum -= lower[i * n + l] * residuals[l];
    residuals[i] = sum / lower[i * n + i];
  }
}
