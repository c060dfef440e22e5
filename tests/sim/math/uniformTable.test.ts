import { expect, it } from "vitest";
import { lookUp, uniformTable } from "../../../sim/math/uniformTable.ts";

const table = uniformTable([0, 0.25, 1], [10, 20, 22], 64);

it("has the given points where they fall on its own, and the end values beyond", () => {
  expect(lookUp(table, 0)).toBe(10);
  expect(lookUp(table, 0.25)).toBeCloseTo(20, 12);
  expect(lookUp(table, 1)).toBe(22);
  expect(lookUp(table, -5)).toBe(10);
  expect(lookUp(table, 5)).toBe(22);
});

it("is a straight line between two of its own points", () => {
  const [left, right] = [lookUp(table, 10 / 64), lookUp(table, 11 / 64)];
  expect(lookUp(table, 10.5 / 64)).toBeCloseTo(0.5 * (left + right), 12);
});

it("rises where its points rise", () => {
  for (let i = 1; i <= 1000; i++) expect(lookUp(table, i / 1000)).toBeGreaterThanOrEqual(lookUp(table, (i - 1) / 1000));
});

it("may begin elsewhere than at zero", () => {
  const warm = uniformTable([253, 273, 298], [6, 2.5, 1], 256);
  expect(lookUp(warm, 253)).toBe(6);
  expect(lookUp(warm, 298)).toBe(1);
  expect(lookUp(warm, 273)).toBeCloseTo(2.5, 2);
});
