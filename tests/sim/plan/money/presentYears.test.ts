import { describe, expect, it } from "vitest";
import { presentYears } from "../../../../sim/plan/money/presentYears.ts";

// Present value of an annuity of 1 a year, as printed in tables of compound interest; four decimals, from memory.
const annuity = [
  [5, 0.03, 4.5797],
  [10, 0.05, 7.7217],
  [10, 0.1, 6.1446],
  [20, 0.06, 11.4699],
] as const;

describe("payments of years to come", () => {
  it.each(annuity)("of %d years at %d are the annuity of the printed table", (years, rate, printed) => {
    expect(Math.abs(presentYears(years, 0, rate) - printed)).toBeLessThan(0.00005);
  });

  // (1 - ((1 + g)/(1 + r))^n) / (r - g): the growing annuity in closed form.
  it.each([
    [10, 0.02, 0.05],
    [25, 0.08, 0.03],
    [7, -0.03, 0.04],
    [15, 0.04, 0],
  ])("of %d years that grow by %d at a rate of %d are the growing annuity", (years, g, r) => {
    const closed = (1 - ((1 + g) / (1 + r)) ** years) / (r - g);
    expect(presentYears(years, g, r)).toBeCloseTo(closed, 10);
  });

  it("that grow as fast as they are discounted are all worth the first one", () => {
    expect(presentYears(12, 0.05, 0.05)).toBeCloseTo(12 / 1.05, 12);
  });
  it("are as many as the years where nothing grows and nothing is discounted, and none for no years", () => {
    expect(presentYears(9, 0, 0)).toBe(9);
    expect(presentYears(0, 0.1, 0.1)).toBe(0);
  });
});
