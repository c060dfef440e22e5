import { describe, expect, it } from "vitest";
import { createHeatFactors, derating_frac, prepareHeat, warmed_K } from "../../../sim/math/heatLump.ts";

/** 10 kJ/K, 25 W/K: a time constant of 400 s; 1 kW in it settles 40 K above the air. */
const lump = { perCapacity_KpJ: 1e-4, cooling_WpK: 25 };

it("follows the exponential at any length of step", () => {
  for (const dt_s of [1e-3, 1, 60, 400, 40_000]) {
    const found_K = warmed_K(lump, createHeatFactors(), 293, 1000, 293, dt_s);
    expect(found_K - 293).toBeCloseTo(40 * (1 - Math.exp(-dt_s / 400)), 10);
  }
});

it("is the same in one step and in many", () => {
  const factors = createHeatFactors();
  let temperature_K = 350;
  for (let i = 0; i < 600; i++) temperature_K = warmed_K(lump, factors, temperature_K, 700, 270, 0.5);
  expect(temperature_K).toBeCloseTo(warmed_K(lump, createHeatFactors(), 350, 700, 270, 300), 9);
});

it("works its factors out anew for a step of another length", () => {
  const factors = createHeatFactors();
  warmed_K(lump, factors, 300, 0, 300, 1);
  expect(warmed_K(lump, factors, 300, 1000, 300, 400) - 300).toBeCloseTo(40 * (1 - Math.exp(-1)), 10);
});

it("rises by loss over capacity without cooling", () => {
  expect(warmed_K({ perCapacity_KpJ: 1e-4, cooling_WpK: 0 }, createHeatFactors(), 300, 1000, 250, 100)).toBeCloseTo(
    310,
    10,
  );
});

it("keeps the temperature of a lump without heat to the last digit", () => {
  expect(warmed_K({ perCapacity_KpJ: 0, cooling_WpK: 0 }, createHeatFactors(), 293.15, 1e6, 250, 1)).toBe(293.15);
});

const part = { capacity_kJpK: 2, cooling_WpK: 1.5, derateFrom_degC: 40, derateTo_degC: 60 };

describe("heat of equal parts", () => {
  it("adds up their capacities and what cools them", () => {
    const heat = prepareHeat(part, 4);
    expect(heat.perCapacity_KpJ).toBeCloseTo(1 / 8000, 15);
    expect(heat.cooling_WpK).toBe(6);
    expect(heat.derateFrom_K).toBeCloseTo(313.15, 9);
    expect(heat.derateTo_K).toBeCloseTo(333.15, 9);
  });
  it("is none where they have no word on it, and nothing is ever held back", () => {
    const heat = prepareHeat(undefined, 4);
    expect([heat.perCapacity_KpJ, heat.cooling_WpK, derating_frac(heat, 1000)]).toEqual([0, 0, 1]);
  });
});

it("holds work back in a straight line between two temperatures", () => {
  const heat = prepareHeat(part, 1);
  expect([300, 318.15, 340].map((at_K) => derating_frac(heat, at_K))).toEqual([1, expect.closeTo(0.75, 9), 0]);
});
