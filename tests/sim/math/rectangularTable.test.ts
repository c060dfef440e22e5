import { expect, it } from "vitest";
import { bilinear, rectangularTable } from "../../../sim/math/rectangularTable.ts";

// 2 + 3x + 5y + 7xy is a bilinear surface: the table has it everywhere.
const surface = (x: number, y: number) => 2 + 3 * x + 5 * y + 7 * x * y;
const xs = [0, 1, 4, 4.5];
const ys = [-2, 0, 3];
const table = rectangularTable(
  xs,
  ys,
  xs.map((x) => ys.map((y) => surface(x, y))),
);

it("has its nodes", () => {
  for (const x of xs) for (const y of ys) expect(bilinear(table, x, y)).toBeCloseTo(surface(x, y), 12);
});

it("is bilinear in a cell, and goes on with the nearest cell's surface beyond the grid", () => {
  for (const [x, y] of [
    [0.5, -1],
    [2.2, 1.1],
    [4.2, 2.9],
    [-1, 1],
    [7, -3],
    [2, 9],
  ])
    expect(bilinear(table, x, y)).toBeCloseTo(surface(x, y), 10);
});

it("lies between its cell's corners", () => {
  const rough = rectangularTable(
    [0, 1, 2],
    [0, 1, 2],
    [
      [0, 5, 1],
      [3, 9, 2],
      [8, 1, 4],
    ],
  );
  expect(bilinear(rough, 0.5, 0.5)).toBeCloseTo((0 + 5 + 3 + 9) / 4, 12);
  expect(bilinear(rough, 1.5, 1.25)).toBeCloseTo(0.75 * 0.5 * (9 + 1) + 0.25 * 0.5 * (2 + 4), 12);
});
