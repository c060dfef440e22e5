import { expect, it } from "vitest";
import { solveLinear } from "../../../sim/math/solveLinear.ts";

it("solves three equations", () => {
  const matrix = [
    [2, 1, -1],
    [-3, -1, 2],
    [-2, 1, 2],
  ];
  // 2·2 + 3 + 1, −6 − 3 − 2, −4 + 3 − 2.
  const x = solveLinear(matrix, [8, -11, -3]);
  expect(x?.map((each) => Math.round(1e12 * each) / 1e12)).toEqual([2, 3, -1]);
});

it("changes rows where a pivot is zero, and leaves what it was given as it was", () => {
  const matrix = [
    [0, 1],
    [1, 1],
  ];
  expect(solveLinear(matrix, [2, 3])).toEqual([1, 2]);
  expect(matrix).toEqual([
    [0, 1],
    [1, 1],
  ]);
});

it("has no solution of equations that say the same twice", () => {
  const matrix = [
    [0.5, 1],
    [1, 2],
  ];
  expect(solveLinear(matrix, [1, 2])).toBeUndefined();
});
