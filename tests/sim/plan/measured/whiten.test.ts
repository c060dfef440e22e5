import { expect, it } from "vitest";
import { whiten } from "../../../../sim/plan/measured/whiten.ts";

it("whitens residuals by the factor: L x = r", () => {
  const residuals = Float64Array.of(2 * 3, 4 * 3 + 7 * 5);
  whiten(Float64Array.of(2, 0, 4, 7), residuals);
  expect(Array.from(residuals)).toEqual([3, 5]);
});
