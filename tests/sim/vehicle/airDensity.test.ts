import { describe, expect, it } from "vitest";
import { airDensity_kgpm3, standardPressure_Pa } from "../../../sim/vehicle/airDensity.ts";

describe("the density of air", () => {
  it("is that of road-load work at 20 degC and 100 kPa", () => {
    expect(airDensity_kgpm3(293.15, 100_000)).toBeCloseTo(1.189, 12);
  });

  it("goes with pressure and against temperature", () => {
    expect(airDensity_kgpm3(293.15, 90_000)).toBeCloseTo(0.9 * 1.189, 12);
    expect(airDensity_kgpm3(273.15, 100_000)).toBeCloseTo((1.189 * 293.15) / 273.15, 12);
  });

  it("is that of the standard atmosphere at the sea within the gas constant's 0.06 %", () => {
    // 1.225 kg/m3 at 288.15 K and 101 325 Pa. [ISO2533, table 1], from memory
    expect(Math.abs(airDensity_kgpm3(288.15, 101_325) / 1.225 - 1)).toBeLessThan(6e-4);
  });
});

describe("the pressure of the standard atmosphere", () => {
  // Printed to a pascal. [ISO2533, table 1], from memory
  it.each([
    [0, 101_325],
    [1000, 89_876],
    [2000, 79_501],
    [3000, 70_121],
    [5000, 54_048],
  ])("at %i m is %i Pa", (altitude_m, pressure_Pa) => {
    // The table is by geometric height and the law by geopotential height, which is 0.08 % less at 5000 m.
    expect(Math.abs(standardPressure_Pa(altitude_m) / pressure_Pa - 1)).toBeLessThan(6e-4);
  });
});
