import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { straighten } from "../../../../../web/charts/parts/lines/straighten.ts";

const all = (y: readonly number[]) => y.map((_, i) => i);

/** Value at `at` of the line through the kept rows. */
function lineThrough(kept: readonly number[], x: readonly number[], y: readonly number[], row: number): number {
  const after = kept.findIndex((each) => each >= row);
  const [a, b] = [kept[Math.max(0, after - 1)], kept[after]];
  return x[b] === x[a] ? y[b] : y[a] + ((y[b] - y[a]) * (x[row] - x[a])) / (x[b] - x[a]);
}

describe("a line drawn by fewer rows", () => {
  it("needs only the corners of straight spans", () => {
    const y = [0, 1, 2, 3, 3, 3, 3, 1.5, 0];
    expect(straighten(all(y), all(y), y, 0.01)).toEqual([0, 3, 6, 8]);
  });

  it("keeps rows that are not on a row of equal steps", () => {
    const [x, y] = [
      [0, 1, 5, 6],
      [0, 1, 5, 0],
    ];
    expect(straighten([0, 1, 2, 3], x, y, 0.01)).toEqual([0, 2, 3]);
  });

  it("keeps both edges of a gap", () => {
    const y = [1, 1, 1, Number.NaN, 2, 2, 2];
    expect(straighten(all(y), all(y), y, 0.1)).toEqual([0, 2, 3, 4, 6]);
  });

  it("keeps the height of a jump at one place, as where a car stands", () => {
    expect(straighten([0, 1, 2, 3], [0, 5, 5, 9], [0, 0, 8, 8], 0.1)).toEqual([0, 1, 2, 3]);
  });

  it("has nothing to draw of nothing, and one row of one", () => {
    expect(straighten([], [], [], 1)).toEqual([]);
    expect(straighten([4], [0, 0, 0, 0, 7], [0, 0, 0, 0, 7], 1)).toEqual([4]);
  });

  it("never strays from any row by more than the tolerance", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: -50, max: 50 })), { minLength: 2 }),
        fc.constantFrom(0.5, 3, 20),
        (steps, tolerance) => {
          let along = 0;
          const x = steps.map(([step]) => (along += step));
          const y = steps.map(([, value]) => value);
          const kept = straighten(all(y), x, y, tolerance);
          expect([kept[0], kept.at(-1)]).toEqual([0, y.length - 1]);
          for (const row of all(y)) {
            expect(Math.abs(lineThrough(kept, x, y, row) - y[row])).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
          }
        },
      ),
    );
  });
});
