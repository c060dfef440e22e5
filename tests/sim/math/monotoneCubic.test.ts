import fc from "fast-check";
import { expect, it } from "vitest";
import { monotoneCubic } from "../../../sim/math/monotoneCubic.ts";

const at = (x: readonly number[], y: readonly number[], ...places: readonly number[]) =>
  Array.from(monotoneCubic(x, y, Float64Array.from(places)));

it("goes through its points and takes the end values beyond them", () => {
  expect(at([0, 1, 3], [2, 5, 6], 0, 1, 3, -4, 9)).toEqual([2, 5, 6, 2, 6]);
});

it("is a straight line through two points, and through points on a line", () => {
  expect(at([0, 2], [1, 5], 0.5, 1.5)).toEqual([2, 4]);
  for (const [i, value] of at([0, 1, 2, 5], [0, 2, 4, 10], 0.3, 1.7, 3.3).entries())
    expect(value).toBeCloseTo([0.6, 3.4, 6.6][i], 12);
});

it("stays level where two neighbours are level, and turns only at a point", () => {
  for (const value of at([0, 1, 2, 3], [1, 4, 4, 0], 1.2, 1.5, 1.9)) expect(value).toBeCloseTo(4, 14);
});

it("never leaves the range of the two points beside it", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: -1000, max: 1000 })), {
        minLength: 2,
        maxLength: 12,
      }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (points, part) => {
        let place = 0;
        const x = points.map(([gap]) => {
          place += gap;
          return place;
        });
        const y = points.map(([, value]) => value);
        for (let i = 1; i < x.length; i++) {
          const [value] = at(x, y, x[i - 1] + part * (x[i] - x[i - 1]));
          expect(value).toBeGreaterThanOrEqual(Math.min(y[i - 1], y[i]) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(y[i - 1], y[i]) + 1e-9);
        }
      },
    ),
  );
});
