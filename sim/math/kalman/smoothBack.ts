import { choleskyFactor, choleskySolve } from "../cholesky.ts";
import type { MotionModel } from "./motionModel.ts";
import { predictCovariance, predictMeans } from "./predict.ts";

/**
 * Overwrites the filtered means by the smoothed ones, from the last event to the first [RTS1965, eq. 3.28]:
 *
 *   x_k|N = x_k + P_k F' (P_k+1|k)^-1 (x_k+1|N - F x_k)
 *
 * `covariances` holds the filtered P_k, event after event, each row-major.
 */
export function smoothBack(model: MotionModel, mean: Float64Array, covariances: Float64Array): void {
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
    predictMeans(n, axes, transition, filtered, predicted);
    for (let i = 0; i < nn; i++) {
      covariance[i] = covariances[k * nn + i];
    }
    predictCovariance(n, transition, noise, covariance, work);
    choleskyFactor(n, covariance);
    for (let axis = 0; axis < axes; axis++) {
      for (let i = 0; i < n; i++) {
        step[i] = mean[((k + 1) * axes + axis) * n + i] - predicted[axis * n + i];
      }
      choleskySolve(n, covariance, step);
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
