import fc from "fast-check";
import { expect, it } from "vitest";
import { bandOf, shifted } from "../../../../sim/plan/answer/band.ts";

const ends = fc.array(
  fc.record({
    atLow: fc.double({ min: 0, max: 500, noNaN: true }),
    atHigh: fc.double({ min: 0, max: 500, noNaN: true }),
  }),
);

it("adds the drops and the rises of independent unknowns as squares do, each side for itself", () => {
  expect(
    bandOf(10, [
      { atLow: 13, atHigh: 4 },
      { atLow: 2, atHigh: 14 },
    ]),
  ).toEqual({ value: 10, low: 0, high: 15 });
});

it("never mirrors a side: what can only be worse has nothing above", () => {
  expect(bandOf(50, [{ atLow: 50, atHigh: 1 }])).toEqual({ value: 50, low: 1, high: 50 });
});

it("is empty where nothing is unknown", () => {
  expect(bandOf(50, [])).toEqual({ value: 50, low: 50, high: 50 });
});

it("holds its value, and reaches at least as far as each unknown alone", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 500, noNaN: true }), ends, (value, unknowns) => {
      const { low, high } = bandOf(value, unknowns);
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
      for (const { atLow, atHigh } of unknowns) {
        expect(low).toBeLessThanOrEqual(Math.min(atLow, atHigh) + 1e-9);
        expect(high).toBeGreaterThanOrEqual(Math.max(atLow, atHigh) - 1e-9);
      }
    }),
  );
});

it("is nought, not a rounding error below it, where a day takes the whole range", () => {
  expect(shifted({ value: 0.3, low: 0.1 + 0.2 - 1e-16, high: 1 }, -(0.1 + 0.2))).toEqual({
    value: 0,
    low: 0,
    high: 0.7,
  });
});
