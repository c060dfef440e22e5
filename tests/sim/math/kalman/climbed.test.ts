import { expect, it } from "vitest";
import { climbed } from "../../../../sim/math/kalman/climbed.ts";

it("finds the top of a hill whose quantities do not trade against each other", () => {
  const tried = { a: [0, 1, 2], b: [0, 1, 2] };
  expect(climbed({ a: 0, b: 0 }, tried, ({ a, b }) => -((a - 1) ** 2) - (b - 2) ** 2)).toEqual({ a: 1, b: 2 });
});

it("goes round once more where something moved", () => {
  // Only with b at 1 is it better for a to move.
  const likelihood = ({ a, b }: { readonly a: number; readonly b: number }) => (b === 1 ? 1 + 2 * a : -a);
  expect(climbed({ a: 0, b: 0 }, { a: [0, 1], b: [0, 1] }, likelihood)).toEqual({ a: 1, b: 1 });
});

it("stays where nothing is likelier, and does not try the value that it stands on", () => {
  let runs = 0;
  const found = climbed({ a: 1 }, { a: [0, 1, 2] }, ({ a }) => {
    runs++;
    return -((a - 1) ** 2);
  });
  expect(found).toEqual({ a: 1 });
  expect(runs).toBe(3);
});
