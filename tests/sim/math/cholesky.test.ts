import { expect, it } from "vitest";
import { choleskyFactor, choleskySolve } from "../../../sim/math/cholesky.ts";

// (4 2 2; 2 5 3; 2 3 6) is L L' of L = (2 0 0; 1 2 0; 1 1 2).
const matrix = () => Float64Array.of(4, 2, 2, 2, 5, 3, 2, 3, 6);

it("puts the factor into the lower half", () => {
  const factor = matrix();
  choleskyFactor(3, factor);
  expect([0, 3, 4, 6, 7, 8].map((place) => factor[place])).toEqual([2, 1, 2, 1, 1, 2]);
});

it("solves for what the matrix was multiplied by", () => {
  const factor = matrix();
  choleskyFactor(3, factor);
  // The matrix times (1, 2, 3).
  const x = Float64Array.of(14, 21, 26);
  choleskySolve(3, factor, x);
  expect([...x].map((each) => Math.round(1e12 * each) / 1e12)).toEqual([1, 2, 3]);
});

it("keeps a pivot that rounding has taken just above zero", () => {
  const singular = Float64Array.of(1, 1, 1, 1);
  choleskyFactor(2, singular);
  expect(singular[3]).toBeGreaterThan(0);
  expect(singular[3]).toBeLessThan(1e-6);
});
