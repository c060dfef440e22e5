import fc from "fast-check";
import { expect, it } from "vitest";
import { nonNegativeLeastSquares } from "../../../sim/math/nonNegativeLeastSquares.ts";

it("finds coefficients that fit exactly", () => {
  const rows = [
    [1, 0, 2],
    [0, 1, 1],
    [3, 1, 0],
    [1, 1, 1],
  ];
  const found = nonNegativeLeastSquares(
    rows,
    rows.map(([a, b, c]) => 2 * a + 0.5 * b + 3 * c),
  );
  [2, 0.5, 3].forEach((value, i) => {
    expect(found[i]).toBeCloseTo(value, 9);
  });
});

it("puts at nothing what would have to be negative", () => {
  // The best free line through these has a negative slope.
  const line = [
    [1, 0],
    [1, 1],
    [1, 2],
  ];
  const [level, slope] = nonNegativeLeastSquares(line, [3, 2, 1]);
  expect(level).toBeCloseTo(2, 14);
  expect(slope).toBe(0);
  expect(nonNegativeLeastSquares([[1], [1]], [-1, -3])).toEqual([0]);
});

it("gives a column of zeros the coefficient 0", () => {
  const [first, second] = nonNegativeLeastSquares(
    [
      [0, 1],
      [0, 2],
    ],
    [2, 4],
  );
  expect(first).toBe(0);
  expect(second).toBeCloseTo(2, 12);
});

it("is at a minimum: no single coefficient can move, not below zero, and fit better", () => {
  const row = fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 3, maxLength: 3 });
  fc.assert(
    fc.property(
      fc.array(row, { minLength: 3, maxLength: 8 }),
      fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 8, maxLength: 8 }),
      (rows, all) => {
        const targets = all.slice(0, rows.length);
        const misfit = (x: readonly number[]) =>
          rows.reduce((sum, values, i) => sum + (values.reduce((dot, a, j) => dot + a * x[j], 0) - targets[i]) ** 2, 0);
        const best = nonNegativeLeastSquares(rows, targets);
        expect(best.every((value) => value >= 0)).toBe(true);
        for (let j = 0; j < 3; j++)
          for (const move of [-1e-3, 1e-3]) {
            const moved = best.map((value, k) => (k === j ? Math.max(0, value + move) : value));
            expect(misfit(moved)).toBeGreaterThanOrEqual(misfit(best) - 1e-9);
          }
      },
    ),
  );
});
