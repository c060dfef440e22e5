import { expect, it } from "vitest";
import { standingStarts } from "../../../web/charts/standingStarts.ts";
import { drawing } from "../../support/drawing.ts";

it("has a line for each start, read at the same moment", () => {
  const starts = [
    { name: "second", time_s: [0, 10], speed_mps: [0, 20] },
    { name: "third", time_s: [0, 10], speed_mps: [0, 10] },
  ];
  const { alt, read, table } = standingStarts(starts, drawing());
  expect(alt).toMatch(/^Speed over time from rest at full throttle: second .*; third /);
  expect(table.rows).toContainEqual(["second", 10, 72]);
  // Half way: 10 and 5 m/s.
  expect(read?.(5).values.map(({ label, text }) => [label, Number.parseFloat(text)])).toEqual([
    ["second", 36],
    ["third", 18],
  ]);
});
