/**
 * Takes one scalar measurement z = h x + e into a Gaussian, in place [Kalman1960, eq. 21 to 25], and returns the logarithm of the
 * measurement's density. `gain` is scratch of n.
 */
export function scalarUpdate(
  n: number,
  mean: Float64Array,
  covariance: Float64Array,
  row: Float64Array,
  variance: number,
  value: number,
  gain: Float64Array,
): number {
  let spread = variance;
  let residual = value;
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += covariance[i * n + j] * row[j];
    gain[i] = sum;
    spread += row[i] * sum;
    residual -= row[i] * mean[i];
  }
  for (let i = 0; i < n; i++) mean[i] += (gain[i] * residual) / spread;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) covariance[i * n + j] -= (gain[i] * gain[j]) / spread;
  }
  return -0.5 * ((residual * residual) / spread + Math.log(2 * Math.PI * spread));
}

/**
 * Replaces one state's mean and variance of a Gaussian by those given, in place, and carries the change over to the other
 * states by their regression on it. `gain` is scratch of n.
 */
export function setMoments(
  n: number,
  mean: Float64Array,
  covariance: Float64Array,
  state: number,
  toMean: number,
  toVariance: number,
  gain: Float64Array,
): void {
  const variance = covariance[state * n + state];
  const moved = toMean - mean[state];
  for (let i = 0; i < n; i++) gain[i] = covariance[i * n + state] / variance;
  for (let i = 0; i < n; i++) mean[i] += gain[i] * moved;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) covariance[i * n + j] += gain[i] * gain[j] * (toVariance - variance);
  }
}
