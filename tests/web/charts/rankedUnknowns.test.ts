import { expect, it } from "vitest";
import { rankedUnknowns } from "../../../web/charts/rankedUnknowns.ts";
import { drawing } from "../../support/drawing.ts";

it("has the least and the most range of each value, whichever end makes it", () => {
  const unknowns = [{ label: "Rolling", atLow_m: 74_000, atHigh_m: 66_000 }];
  const { alt, table } = rankedUnknowns({ range_m: 70_000, unknowns }, drawing());
  expect(table.rows).toEqual([["Rolling", 66, 74]]);
  expect(alt).toMatch(/^Range as it stands 70 km; with one value at the ends of its band: Rolling 66 to 74/);
});

it("says that nothing is open", () => {
  expect(rankedUnknowns({ range_m: 70_000, unknowns: [] }, drawing()).alt).toMatch(/No unknown value moves the range/);
});
