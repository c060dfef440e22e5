import type { MotionModel } from "./motionModel.ts";
import { predictCovariance, predictMeans } from "./predict.ts";
import { smoothBack } from "./smoothBack.ts";

/** Smoothed means, event after event: `mean[(k * axes + axis) * states + state]`; none where only the likelihood is wanted. */
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
  const kept = backward ? events : 0;
  const mean = new Float64Array(kept * axes * n);
  const covariances = new Float64Array(kept * nn);
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
      predictMeans(n, axes, transition, x, predicted);
      x.set(predicted);
      predictCovariance(n, transition, noise, covariance, work);
    }
    model.measure(k, observe);
    if (!backward) continue;
    mean.set(x, k * axes * n);
    covariances.set(covariance, k * nn);
  }
  if (backward) {
    smoothBack(model, mean, covariances);
  }
  return { mean, logLikelihood };
}
