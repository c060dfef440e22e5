import { describe, expect, it } from "vitest";
import { domain, reach } from "../../../../../web/charts/parts/axes/domain.ts";

describe("domain", () => {
  it("holds what it is given, between round numbers", () => {
    expect(domain(3.2, 96)).toEqual([0, 100]);
    expect(domain(-7, 13)).toEqual([-10, 15]);
  });
  it("holds zero where it is asked for", () => {
    expect(domain(40, 55, true)).toEqual([0, 60]);
    expect(domain(-30, -20, true)).toEqual([-30, 0]);
  });
  it.each([
    [0, 0],
    [5, 5],
    [-5, -5],
  ])("is never empty: %d to %d", (low, high) => {
    for (const withZero of [false, true]) {
      const [from, to] = domain(low, high, withZero);
      expect(to).toBeGreaterThan(from);
      expect(from).toBeLessThanOrEqual(low);
      expect(to).toBeGreaterThanOrEqual(high);
    }
  });
});

describe("reach", () => {
  it("is the lowest and highest of the rows filled", () => {
    expect(reach([3, -1, 8, 99], 3)).toEqual([-1, 8]);
    expect(reach([], 0)).toEqual([0, 0]);
  });
});
