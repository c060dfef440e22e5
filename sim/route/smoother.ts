// Longer than most files: forward and backward pass and their small matrix work are one algorithm.
/**
 * A linear model of something that moves and is measured now and then, told to the smoother one event at a time.
 * All axes share transition, noise and measurement rows, and so one covariance: east and north, say.
 */
export interface MotionModel {
  readonly states: number;
  readonly axes: number;
  readonly events: number;
  /** Variances of the states before the first event (row-major matrix), and their means per axis. */
  readonly startCovariance: Float64Array;
  readonly startMean: Float64Array;
  /** Fills the transition from event k - 1 to event k and its noise, both row-major and zero on entry. */
  transition(k: number, transition: Float64Array, noise: Float64Array): void;
  /** Calls `observe` for each measurement at event k: its row, its variance, and its value for each axis. */
  measure(k: number, observe: (row: Float64Array, variance: number, values: Float64Array) => void): void;
}

/** Smoothed means, event after event: `mean[(k * axes + axis) * states + state]`. */
export interface Smoothed {
  readonly mean: Float64Array;
  /** Sum over measurements of minus half of (residual^2 / variance + log variance): how well the model fits. */
  readonly logLikelihood: number;
}

/**
 * The states of a model at every event, given all measurements before and after: a Kalman filter forward
 * [Kalman1960, eq. 21 to 25] and the backward pass of Rauch, Tung and Striebel [RTS1965, eq. 3.28]
 *
 *   x_k|N = x_k + P_k F' (P_k+1|k)^-1 (x_k+1|N - F x_k)
 *
 * Measurements are taken in one after another as scalars, so that nothing but the predicted covariance is inverted.
 */
export function smooth(model: MotionModel, backward = true): Smoothed {
  const { states: n, axes, events } = model;
  const nn = n * n;
  const mean = new Float64Array(events * axes * n);
  const covariances = new Float64Array(events * nn);
  const transition = new Float64Array(nn);
  const noise = new Float64Array(nn);
  const covariance = Float64Array.from(model.startCovariance);
  const x = Float64Array.from(model.startMean);
  const work = new Float64Array(nn);
  const predicted = new Float64Array(axes * n);
  const gain = new Float64Array(n);
  let logLikelihood = 0;

  const observe = (row: Float64Array, variance: number, values: Float64Array): void => {
    let spread = variance;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) {
        sum += covariance[i * n + j] * row[j];
      }
      gain[i] = sum;
      spread += row[i] * sum;
    }
    for (let axis = 0; axis < axes; axis++) {
      let residual = values[axis];
      for (let i = 0; i < n; i++) {
        residual -= row[i] * x[axis * n + i];
      }
      logLikelihood -= 0.5 * ((residual * residual) / spread + Math.log(spread));
      for (let i = 0; i < n; i++) {
        x[axis * n + i] += (gain[i] * residual) / spread;
      }
    }
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        covariance[i * n + j] -= (gain[i] * gain[j]) / spread;
      }
    }
  };

  for (let k = 0; k < events; k++) {
    if (k > 0) {
      transition.fill(0);
      noise.fill(0);
      model.transition(k, transition, noise);
      carry(n, axes, transition, x, predicted);
      x.set(predicted);
      spreadOut(n, transition, noise, covariance, work);
    }
    model.measure(k, observe);
    mean.set(x, k * axes * n);
    covariances.set(covariance, k * nn);
  }
  if (backward) {
    runBack(model, mean, covariances);
  }
  return { mean, logLikelihood };
}

/** Overwrites the filtered means by the smoothed ones, from the last event to the first. */
function runBack(model: MotionModel, mean: Float64Array, covariances: Float64Array): void {
  const { states: n, axes, events } = model;
  const nn = n * n;
  const transition = new Float64Array(nn);
  const noise = new Float64Array(nn);
  const covariance = new Float64Array(nn);
  const work = new Float64Array(nn);
  const predicted = new Float64Array(axes * n);
  const step = new Float64Array(n);
  for (let k = events - 2; k >= 0; k--) {
    transition.fill(0);
    noise.fill(0);
    model.transition(k + 1, transition, noise);
    const filtered = mean.subarray(k * axes * n, (k + 1) * axes * n);
    carry(n, axes, transition, filtered, predicted);
    for (let i = 0; i < nn; i++) {
      covariance[i] = covariances[k * nn + i];
    }
    spreadOut(n, transition, noise, covariance, work);
    factor(n, covariance);
    for (let axis = 0; axis < axes; axis++) {
      for (let i = 0; i < n; i++) {
        step[i] = mean[((k + 1) * axes + axis) * n + i] - predicted[axis * n + i];
      }
      solve(n, covariance, step);
      for (let i = 0; i < n; i++) {
        let sum = 0;
        for (let j = 0; j < n; j++) {
          // row i of P F' times the solved step
          let through = 0;
          for (let l = 0; l < n; l++) {
            through += covariances[k * nn + i * n + l] * transition[j * n + l];
          }
          sum += through * step[j];
        }
        filtered[axis * n + i] += sum;
      }
    }
  }
}

function carry(n: number, axes: number, transition: Float64Array, from: Float64Array, to: Float64Array): void {
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

/** covariance = F covariance F' + noise, in place. */
function spreadOut(
  n: number,
  transition: Float64Array,
  noise: Float64Array,
  covariance: Float64Array,
  work: Float64Array,
): void {
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let l = 0; l < n; l++) {
        sum += transition[i * n + l] * covariance[l * n + j];
      }
      work[i * n + j] = sum;
    }
  }
  for (let i = 0; i < n; i++) {
    for (let j = i; j < n; j++) {
      let sum = noise[i * n + j];
      for (let l = 0; l < n; l++) {
        sum += work[i * n + l] * transition[j * n + l];
      }
      covariance[i * n + j] = sum;
      covariance[j * n + i] = sum;
    }
  }
}

/** Cholesky factor into the lower half, in place; a pivot lost to rounding is lifted just above zero. */
function factor(n: number, matrix: Float64Array): void {
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

/** Solves factor factor' x = right side, in place. */
function solve(n: number, lower: Float64Array, x: Float64Array): void {
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
