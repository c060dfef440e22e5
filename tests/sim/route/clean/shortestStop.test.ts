import { describe, expect, it } from "vitest";
import { shortestStop_s } from "../../../../sim/route/clean/shortestStop.ts";

const noise = (correlated_m: number) => ({ correlated_m, correlation_s: 20, white_m: 0.5 });

describe("the shortest stop that shows", () => {
  it("is the interval of the fixes where their speeds are recorded", () => {
    expect(shortestStop_s(1, undefined)).toBe(1);
    expect(shortestStop_s(10, undefined)).toBe(10);
  });

  it("is where positions alone show it the time in which walking pace makes more way than they wander", () => {
    for (const correlated_m of [3, 5, 8]) {
      const shortest_s = shortestStop_s(1, noise(correlated_m));
      // The equation before its first order was taken; the difference is of second order in t / T.
      const wander_m = 2 * correlated_m * Math.sqrt(2 * (1 - Math.exp(-shortest_s / 20)));
      expect(1.5 * shortest_s).toBeGreaterThan(wander_m);
      expect(1.5 * shortest_s).toBeLessThan(1.2 * wander_m);
    }
    expect(shortestStop_s(30, noise(5))).toBe(30);
  });
});
