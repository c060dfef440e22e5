import { expect, it } from "vitest";
import type { MotionModel } from "../../../../sim/math/kalman/motionModel.ts";
import { smoothBack } from "../../../../sim/math/kalman/smoothBack.ts";

function modelOf(states: number, axes: number, events: number, matrix: readonly number[], noises: readonly number[]) {
  const model: MotionModel = {
    states,
    axes,
    events,
    startCovariance: new Float64Array(states * states),
    startMean: new Float64Array(axes * states),
    transition(_, transition, noise) {
      transition.set(matrix);
      noise.set(noises);
    },
    measure() {},
  };
  return model;
}

it("takes back half of what came later where the walk is as uncertain as the filter, for each axis", () => {
  // Gain P / (P + Q) = 1/2: 1 + (3 - 1) / 2 and 4 + (0 - 4) / 2.
  const mean = Float64Array.of(1, 4, 3, 0);
  smoothBack(modelOf(1, 2, 2, [1], [1]), mean, Float64Array.of(1, 1));
  expect([...mean].map((each) => Math.round(1e9 * each) / 1e9)).toEqual([2, 2, 3, 0]);
});

it("goes straight back along a motion without noise", () => {
  // Where it is at 5 with a speed of 2 it was at 3 a moment before.
  const mean = Float64Array.of(0, 0, 5, 2);
  smoothBack(modelOf(2, 1, 2, [1, 1, 0, 1], [0, 0, 0, 0]), mean, Float64Array.of(1, 0, 0, 1, 1, 0, 0, 1));
  expect([...mean].map((each) => Math.round(1e9 * each) / 1e9)).toEqual([3, 2, 5, 2]);
});
