import { describe, expect, it } from "vitest";
import { layoutFigures } from "../../../../sim/plan/layouts/layoutFigures.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { straightPack } from "../../../support/chargeable.ts";

// A module of 20 cells, 40 V empty to 80 V full in a straight line, behind 0.1 ohm, of 60 Ah. A quarter of its charge is left unused at either end.
const { module, packs } = bareJob(straightPack);
const pack = {
  ...packs[0],
  seriesModules: 2,
  parallelModules: 4,
  floor_frac: 0.25,
  ceiling_frac: 0.75,
  leads_mohm: 30,
};
const figures = (tenSeconds_W: number, peak_W = tenSeconds_W, rms_W = 1000) =>
  layoutFigures(module, { tenSeconds_W, peak_W, rms_W })(pack);

describe("two modules in series, four strings", () => {
  it("have twice the volts, and the mean over the charge by the straight line", () => {
    expect(figures(0).full_V).toBeCloseTo(160, 9);
    expect(figures(0).flat_V).toBeCloseTo(40, 9);
    expect(figures(0).nominal_V).toBeCloseTo(120, 3);
  });
  it("hold 240 Ah at the mean volts of the whole charge, and half of it within the window", () => {
    expect(figures(0).nominal_kWh).toBeCloseTo(28.8, 3);
    expect(figures(0).usable_kWh).toBeCloseTo(14.4, 3);
  });
  it("sag when nearly empty behind half a module's resistance and the leads", () => {
    // 100 V open at a quarter, 0.05 + 0.03 ohm. At 200 A they give 84 V: 16.8 kW.
    const { loaded_V, string_A } = figures(16_800);
    expect(loaded_V).toBeCloseTo(84, 6);
    expect(string_A.tenSeconds).toBeCloseTo(50, 6);
    // At 300 A 76 V: 22.8 kW.
    expect(figures(16_800, 22_800).string_A.peak).toBeCloseTo(75, 6);
  });
  it("give no more than U²/4R, 31.25 kW, and none of the volts beyond", () => {
    expect(figures(31_200).loaded_V).toBeGreaterThan(50);
    expect(figures(31_300).loaded_V).toBe(0);
  });
  it("warm up by the current at the middle of the window", () => {
    // 120 V open at a half; at 100 A 112 V: 11.2 kW.
    expect(figures(0, 0, 11_200).string_A.rms).toBeCloseTo(25, 6);
  });
});
