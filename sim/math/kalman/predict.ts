/** The means one event on, x = F x for each axis, into `to` [Kalman1960, eq. 21 to 25]. */
export function predictMeans(
  n: number,
  axes: number,
  transition: Float64Array,
  from: Float64Array,
  to: Float64Array,
): void {
  for (let axis = 0; axis < axes; axis++) {
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) {
        sum += transition[i * n + j] * from[axis * n + j];
      }
      to[axis * n + i] = sum;
    }
  }
}

/** The covariance one event on, P = F P F' + noise, in place [Kalman1960, eq. 21 to 25]; `work` is scratch of its size. */
export function predictCovariance(
  n: number,
  transition: Float64Array,
  noise: Float64Array,
  covariance: Float64Array,
  work: Float64Array,
): void {
  // Transitions are mostly zeros; skipping those halves the time of a filter.
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      work[i * n + j] = 0;
    }
    for (let l = 0; l < n; l++) {
      const factor = transition[i * n + l];
      if (factor !== 0) {
        for (let j = 0; j < n; j++) {
          work[i * n + j] += factor * covariance[l * n + j];
        }
      }
    }
  }
  for (let j = 0; j < n; j++) {
    for (let i = 0; i <= j; i++) {
      covariance[i * n + j] = noise[i * n + j];
    }
    for (let l = 0; l < n; l++) {
      const factor = transition[j * n + l];
      if (factor !== 0) {
        for (let i = 0; i <= j; i++) {
          covariance[i * n + j] += work[i * n + l] * factor;
        }
      }
    }
    for (let i = 0; i < j; i++) {
      covariance[j * n + i] = covariance[i * n + j];
    }
  }
}
