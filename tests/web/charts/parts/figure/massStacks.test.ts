import { expect, it } from "vitest";
import { massStacks, type PlacedItem } from "../../../../../web/charts/parts/figure/massStacks.ts";

const item = (name: string, place_m: number, mass_kg: number, kind: PlacedItem["kind"] = "in"): PlacedItem => ({
  name,
  place_m,
  mass_kg,
  kind,
});

it("puts what sits within 25 cm of a column's front into that column, from the front to the rear", () => {
  const stacks = massStacks([item("charger", 2.5, 12), item("motor", 0.1, 60), item("radiator", -0.1, 8)]);
  expect(stacks.map(({ place_m, above }) => [place_m, above.map(({ name }) => name)])).toEqual([
    [-0.1, ["radiator", "motor"]],
    [2.5, ["charger"]],
  ]);
  expect(massStacks([item("a", 0, 1), item("b", 0.25, 1)])).toHaveLength(2);
});

it("has what comes out below and all else above, each with its mass", () => {
  const [stack] = massStacks([
    item("engine", 0, 150, "out"),
    item("motor", 0, 60),
    item("driver", 0, 75, "load"),
    item("box", 0, 120, "box"),
  ]);
  expect([stack.above_kg, stack.below_kg]).toEqual([255, 150]);
  expect(stack.below.map(({ name }) => name)).toEqual(["engine"]);
});

it("has no column where there is no item", () => {
  expect(massStacks([])).toEqual([]);
});
