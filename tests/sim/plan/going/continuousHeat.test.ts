import { expect, it } from "vitest";
import { continuousHeat } from "../../../../sim/plan/going/continuousHeat.ts";

it("lets the loss go at the derating temperature, in surroundings of 40 degC", () => {
  // 1800 W over 90 K; 0.45 kJ/K of each of 40 kg.
  expect(continuousHeat(1800, 40, undefined)).toEqual({
    capacity_kJpK: 18,
    cooling_WpK: 20,
    derateFrom_degC: 130,
    derateTo_degC: 155,
  });
});

it("keeps the temperatures and the capacity that are known", () => {
  const known = { capacity_kJpK: 25, cooling_WpK: 1, derateFrom_degC: 100, derateTo_degC: 120 };
  expect(continuousHeat(1800, 40, known)).toEqual({ ...known, cooling_WpK: 30 });
});

it("asks for no more cooling than over 10 K, and writes three figures", () => {
  const warm = { capacity_kJpK: 25, cooling_WpK: 1, derateFrom_degC: 45, derateTo_degC: 60 };
  expect(continuousHeat(1234.5, 40, warm).cooling_WpK).toBe(123);
  expect(continuousHeat(900, 33.33, undefined).capacity_kJpK).toBe(15);
});
