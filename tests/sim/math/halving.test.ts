import fc from "fast-check";
import { expect, it } from "vitest";
import { firstWhere } from "../../../sim/math/halving.ts";

it("finds the first place at which a condition begins to hold, whatever the place", () => {
  const places = fc.tuple(
    fc.integer({ min: 0, max: 50 }),
    fc.integer({ min: 0, max: 300 }),
    fc.integer({ min: -5, max: 400 }),
  );
  fc.assert(
    fc.property(places, ([low, length, begins]) => {
      const high = low + length;
      expect(firstWhere(low, high, (at) => at >= begins)).toBe(Math.min(high, Math.max(low, begins)));
    }),
  );
});

it("asks no more often than halving needs, and never at the upper end", () => {
  const asked: number[] = [];
  firstWhere(0, 1024, (at) => {
    asked.push(at);
    return false;
  });
  expect(asked.length).toBeLessThanOrEqual(11);
  expect(Math.max(...asked)).toBeLessThan(1024);
});
