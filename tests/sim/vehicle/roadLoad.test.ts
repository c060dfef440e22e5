import { expect, it } from "vitest";
import { drag_N, type RoadLoad, rolling_N } from "../../../sim/vehicle/roadLoad.ts";

const road: RoadLoad = {
  mass_kg: 1000,
  weight_N: 9810,
  rollingWeight_N: 120,
  rollingWeight_Npmps2: 0.05,
  rollingFixed_N: 30,
  rolling_Npmps: 2,
  drag_Npmps2: 0.5,
  headWind_mps: 0,
  wheelDrag_N: 0,
};

it("of rolling grows with the square of speed, and only what goes with weight takes the slope's cosine", () => {
  expect(rolling_N(road, 10, 1)).toBeCloseTo(120 + 5 + 30 + 20, 12);
  expect(rolling_N(road, 10, 0.9)).toBeCloseTo(0.9 * 125 + 50, 12);
});

it("of the air is that of its speed over the car, a head wind added", () => {
  expect(drag_N(road, 10)).toBeCloseTo(50, 12);
  expect(drag_N({ ...road, headWind_mps: 5 }, 10)).toBeCloseTo(0.5 * 225, 12);
});

it("of the air pushes where the wind from behind is faster than the car", () => {
  expect(drag_N({ ...road, headWind_mps: -15 }, 10)).toBeCloseTo(-12.5, 12);
  expect(drag_N({ ...road, headWind_mps: -10 }, 10)).toBeCloseTo(0, 12);
});
