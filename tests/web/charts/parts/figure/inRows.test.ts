import { expect, it } from "vitest";
import { inRows } from "../../../../../web/charts/parts/figure/inRows.ts";

it("sets things side by side until a row is full", () => {
  const { places, rows } = inRows([40, 50, 30], 100);
  expect(places).toEqual([
    { x: 0, row: 0 },
    { x: 40, row: 0 },
    { x: 0, row: 1 },
  ]);
  expect(rows).toBe(2);
});

it("begins where it is asked to, and leaves what is too wide in a row of its own", () => {
  expect(inRows([150, 20], 100, 30).places).toEqual([
    { x: 0, row: 1 },
    { x: 0, row: 2 },
  ]);
  expect(inRows([], 100).rows).toBe(0);
});
