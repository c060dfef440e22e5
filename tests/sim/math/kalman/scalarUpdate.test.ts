import { expect, it } from "vitest";
import { scalarUpdate, setMoments } from "../../../../sim/math/kalman/scalarUpdate.ts";

const gaussian = () => ({
  mean: Float64Array.of(1, 2),
  covariance: Float64Array.of(4, 2, 2, 3),
  gain: new Float64Array(2),
});

it("takes a measurement of one state in, and moves the other by their regression", () => {
  const { mean, covariance, gain } = gaussian();
  // Gain (4, 2) / (4 + 4), residual 5 - 1.
  scalarUpdate(2, mean, covariance, Float64Array.of(1, 0), 4, 5, gain);
  expect([...mean]).toEqual([3, 3]);
  expect([...covariance]).toEqual([2, 1, 1, 2.5]);
});

it("returns the logarithm of the measurement's density", () => {
  const { mean, covariance, gain } = gaussian();
  // Of a normal distribution of variance 8, four from its mean.
  const log = scalarUpdate(2, mean, covariance, Float64Array.of(1, 0), 4, 5, gain);
  expect(log).toBeCloseTo(-0.5 * (16 / 8 + Math.log(2 * Math.PI * 8)), 12);
});

it("sees a sum of states with the variance of the sum", () => {
  const { mean, covariance, gain } = gaussian();
  // Variance 4 + 2·2 + 3 = 11 beside 11 of the measurement: half of the residual of 8 is taken, 6/11 and 5/11 of it by each state.
  scalarUpdate(2, mean, covariance, Float64Array.of(1, 1), 11, 11, gain);
  expect(mean[0]).toBeCloseTo(1 + (4 * 6) / 11, 12);
  expect(mean[1]).toBeCloseTo(2 + (4 * 5) / 11, 12);
});

it("sets a state's moments and carries the change over to the others", () => {
  const { mean, covariance, gain } = gaussian();
  // Regression of the second on the first: 2 / 4.
  setMoments(2, mean, covariance, 0, 3, 1, gain);
  expect([...mean]).toEqual([3, 3]);
  expect([...covariance]).toEqual([1, 0.5, 0.5, 2.25]);
});
