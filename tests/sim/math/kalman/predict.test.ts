import { expect, it } from "vitest";
import { predictCovariance, predictMeans } from "../../../../sim/math/kalman/predict.ts";

const transition = Float64Array.of(1, 2, 0, 1);

it("moves the mean of each axis by the same transition", () => {
  const to = new Float64Array(4).fill(9);
  predictMeans(2, 2, transition, Float64Array.of(3, 4, 1, -1), to);
  expect([...to]).toEqual([3 + 2 * 4, 4, 1 - 2, -1]);
});

it("moves a covariance by F P F' and adds the noise, whatever its scratch held", () => {
  // (1 2; 0 1)(2 1; 1 3)(1 0; 2 1) = (18 7; 7 3), by hand.
  const covariance = Float64Array.of(2, 1, 1, 3);
  predictCovariance(2, transition, Float64Array.of(0.5, 0.25, 0.25, 1), covariance, new Float64Array(4).fill(9));
  expect([...covariance]).toEqual([18.5, 7.25, 7.25, 4]);
});
