import { describe, expect, it } from "vitest";
import { firstWhere, greatestWhere } from "../../../sim/math/halving.ts";

describe("the first whole number", () => {
  it("at which a condition begins to hold, either end included", () => {
    for (const from of [3, 4, 7, 9]) expect(firstWhere(3, 9, (at) => at >= from)).toBe(from);
  });

  it("is the last one where the condition holds at none, which is not tried", () => {
    const tried: number[] = [];
    const holds = (at: number) => {
      tried.push(at);
      return false;
    };
    expect(firstWhere(0, 5, holds)).toBe(5);
    expect(tried).not.toContain(5);
  });
});

describe("the greatest number", () => {
  it("whose square is no more than 2 is its root, to the last digit but one", () => {
    expect(greatestWhere(0, 2, (at) => at * at <= 2)).toBeCloseTo(Math.SQRT2, 15);
  });

  it("holds itself: what is found is on the right side", () => {
    expect(greatestWhere(0, 10, (at) => at <= 1 / 3)).toBeLessThanOrEqual(1 / 3);
  });

  it("is an end where the condition holds throughout or nowhere", () => {
    expect(greatestWhere(2, 5, () => true)).toBe(5);
    expect(greatestWhere(2, 5, () => false)).toBe(2);
  });
});
