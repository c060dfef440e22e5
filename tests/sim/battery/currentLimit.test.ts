import { describe, expect, it } from "vitest";
import { budgetUsed_A2s, currentLimit, currentWithin_A } from "../../../sim/battery/currentLimit.ts";

/** Two strings: 200 A without end, 400 A for 10 s. */
const limit = currentLimit({ continuous_A: 100, peak_A: 200, peak_s: 10 }, 2);

it("counts strings in parallel, and what a peak may use up", () => {
  expect(limit).toEqual({ continuous_A: 200, peak_A: 400, budget_A2s: (400 ** 2 - 200 ** 2) * 10 });
});

describe("most current over an interval", () => {
  it("is the peak while the budget lasts, exactly for its time", () => {
    expect(currentWithin_A(limit, 0, 1)).toBe(400);
    expect(currentWithin_A(limit, 0, 10)).toBe(400);
  });
  it("is what leaves the budget unspent over a longer one", () => {
    expect(currentWithin_A(limit, 0, 20)).toBeCloseTo(Math.sqrt(200 ** 2 + 120_000 / 2), 9);
  });
  it("is the continuous one where the budget is used up", () => {
    expect(currentWithin_A(limit, limit.budget_A2s, 1)).toBe(200);
    expect(currentWithin_A(limit, 2 * limit.budget_A2s, 1)).toBe(200);
  });
  it("is what is left of the budget in between", () => {
    expect(currentWithin_A(limit, limit.budget_A2s - 50_000, 1)).toBeCloseTo(Math.sqrt(40_000 + 50_000), 9);
  });
});

describe("the budget used up", () => {
  it("grows by the square above the continuous current", () => {
    expect(budgetUsed_A2s(limit, 1000, 300, 2)).toBe(1000 + (300 ** 2 - 200 ** 2) * 2);
  });
  it("recovers below it, no further than to nothing", () => {
    expect(budgetUsed_A2s(limit, 100_000, 100, 1)).toBe(70_000);
    expect(budgetUsed_A2s(limit, 100, 0, 1)).toBe(0);
  });
  it("is never more than there is", () =>
    expect(budgetUsed_A2s(limit, limit.budget_A2s, 400, 5)).toBe(limit.budget_A2s));
});
