import { expect, it } from "vitest";
import { roadLoad } from "../../../web/charts/roadLoad.ts";
import { drawing } from "../../support/drawing.ts";

const rows = [
  { speed_mps: 10, rolling_N: 100, aero_N: 50 },
  { speed_mps: 20, rolling_N: 100, aero_N: 200 },
];

it("adds up what holds a steady speed", () => {
  const { table, read } = roadLoad(rows, drawing());
  expect(table.rows).toEqual([
    [36, 100, 50, 150],
    [72, 100, 200, 300],
  ]);
  expect(read?.(15).values.at(-1)).toEqual({ label: "in all", text: "225 N" });
});

it("has the drag of hubs and the hill only where they are there", () => {
  expect(roadLoad(rows, drawing()).table.columns).toHaveLength(4);
  expect(
    roadLoad(
      rows.map((row) => ({ ...row, climb_N: 10 })),
      drawing(),
    ).table.columns,
  ).toHaveLength(5);
  expect(roadLoad([], drawing()).alt).toMatch(/No road load was worked/);
});
