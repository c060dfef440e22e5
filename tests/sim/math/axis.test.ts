import fc from "fast-check";
import { expect, it } from "vitest";
import { createAxis, intervalOf } from "../../../sim/math/axis.ts";

it("finds the first interval below the first node and the last one beyond the last node", () => {
  const axis = createAxis([0, 1, 5, 7]);
  expect(intervalOf(axis, -3)).toBe(0);
  expect(intervalOf(axis, 99)).toBe(2);
});

it("gives a node to the interval that begins there", () => {
  const axis = createAxis([0, 1, 5, 7]);
  expect([0, 1, 5].map((x) => intervalOf(axis, x))).toEqual([0, 1, 2]);
});

it("finds the interval that holds any number, however unevenly the nodes lie", () => {
  const nodes = fc
    .uniqueArray(fc.integer({ min: -100_000, max: 100_000 }), { minLength: 2, maxLength: 40 })
    .map((values) => values.map((value) => value ** 3 / 1e9).sort((a, b) => a - b));
  fc.assert(
    fc.property(nodes, fc.double({ min: -0.1, max: 1.1, noNaN: true }), (values, part) => {
      const x = values[0] + part * (values[values.length - 1] - values[0]);
      const i = intervalOf(createAxis(values), x);
      const rounding = 1e-12 * (Math.abs(values[0]) + Math.abs(values[values.length - 1]));
      expect(i === 0 || values[i] <= x + rounding).toBe(true);
      expect(i === values.length - 2 || x <= values[i + 1] + rounding).toBe(true);
    }),
  );
});
