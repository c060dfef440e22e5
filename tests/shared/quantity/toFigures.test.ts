import { expect, it } from "vitest";
import { toFigures } from "../../../shared/quantity/toFigures.ts";

it("rounds to figures as people count them, up to the next power of ten too", () => {
  expect([1484, 0.0159, 9999, 59.7, -9994].map((size) => toFigures(size, 2))).toEqual([
    1500, 0.016, 10_000, 60, -10_000,
  ]);
  expect([9994, 9996].map((size) => toFigures(size, 3))).toEqual([9990, 10_000]);
  expect(toFigures(0, 3)).toBe(0);
});
