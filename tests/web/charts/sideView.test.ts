import { expect, it } from "vitest";
import { sideView } from "../../../web/charts/sideView.ts";
import { drawing } from "../../support/drawing.ts";

const { alt, table } = sideView(
  {
    wheelbase_m: 2.4,
    wheelRadius_m: 0.29,
    items: [
      { name: "engine", mass_kg: 150, place_m: 0, kind: "out" },
      { name: "boot box", mass_kg: 120, place_m: 2.6, kind: "box" },
    ],
    front_kg: 480,
    rear_kg: 550,
    gravityPlace_m: 1.28,
  },
  drawing(),
);

it("says every mass with its place, and what the axles carry", () => {
  expect(alt).toMatch(/engine/);
  expect(alt).toMatch(/boot box/);
  expect(alt).toMatch(/the front axle carries 480.kg, the rear axle 550.kg/);
});

it("has a row for each in its table", () => {
  expect(table.rows.map(([item]) => item)).toEqual(expect.arrayContaining(["engine", "boot box"]));
});
