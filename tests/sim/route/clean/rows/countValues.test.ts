import { expect, it } from "vitest";
import { countValues } from "../../../../../sim/route/clean/rows/countValues.ts";

it("counts what was recorded, from one row to another", () => {
  const column = Float64Array.of(0, Number.NaN, 2, 3, Number.NaN);
  expect(countValues(column)).toBe(3);
  expect(countValues(column, 1, 3)).toBe(1);
  expect(countValues(new Float64Array(0))).toBe(0);
});
