import { expect, it } from "vitest";
import { createHeatFactors, warmed_K } from "../../../sim/math/heatLump.ts";

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
