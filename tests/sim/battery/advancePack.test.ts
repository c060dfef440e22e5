import { describe, expect, it } from "vitest";
import { advancePack, meetsFloor, timeToFloor_s } from "../../../sim/battery/advancePack.ts";
import { preparePack } from "../../../sim/battery/preparePack.ts";
import { createHeatFactors } from "../../../sim/math/heatLump.ts";
import { bareJob } from "../../support/bareCar.ts";

const job = bareJob({
  module: {
    capacity_Ah: 10,
    discharge: { continuous_A: 50, peak_A: 100, peak_s: 10 },
    charge: { continuous_A: 20, peak_A: 40, peak_s: 10 },
    heat: { capacity_kJpK: 2, cooling_WpK: 0, derateFrom_degC: 40, derateTo_degC: 60 },
  },
  pack: { leads_mohm: 20, ceiling_frac: 0.9, floor_frac: 0.1 },
});
const pack = preparePack(job.packs[0], job.module);
const state = (soc_frac: number) => ({ soc_frac, temperature_K: 300, dischargeUse_A2s: 1000, chargeUse_A2s: 1000 });

describe("the floor", () => {
  // A tenth of 36 000 C at 36 A: 100 s.
  it("is met by a current that lasts exactly until there, and by a longer one", () => {
    expect(meetsFloor(pack, state(0.2), 36, 99.999)).toBe(false);
    expect(meetsFloor(pack, state(0.2), 36, 100.001)).toBe(true);
    expect(timeToFloor_s(pack, state(0.2), 36)).toBeCloseTo(100, 9);
  });
  it("is never met charging or without a current", () => {
    expect(meetsFloor(pack, state(0.1), -36, 1000)).toBe(false);
    expect(meetsFloor(pack, state(0.05), 0, 1000)).toBe(false);
  });
  it("is no time away at it and below", () => {
    expect(meetsFloor(pack, state(0.1), 1, 1)).toBe(true);
    expect(timeToFloor_s(pack, state(0.1), 1)).toBe(0);
    expect(timeToFloor_s(pack, state(0.05), 1)).toBe(0);
  });
});

describe("a time at a current", () => {
  it("takes charge, warms the cells by what they lose and not the leads, and uses the peak budget", () => {
    const moved = state(0.5);
    advancePack(pack, moved, createHeatFactors(), 60, 0.12, 300, 10);
    expect(moved.soc_frac).toBeCloseTo(0.5 - 600 / 36_000, 12);
    expect(moved.temperature_K).toBeCloseTo(300 + (60 * 60 * 0.1 * 10) / 2000, 9);
    expect(moved.dischargeUse_A2s).toBeCloseTo(1000 + (3600 - 2500) * 10, 9);
    // The charging budget recovers meanwhile.
    expect(moved.chargeUse_A2s).toBe(0);
  });
  it("lets the budget of the other direction recover by its continuous current, as at rest", () => {
    const charged = state(0.5);
    advancePack(pack, charged, createHeatFactors(), -5, 0.12, 300, 0.2);
    expect(charged.dischargeUse_A2s).toBeCloseTo(1000 - 2500 * 0.2, 9);
    const drawn = state(0.5);
    advancePack(pack, drawn, createHeatFactors(), 5, 0.12, 300, 0.2);
    expect(drawn.chargeUse_A2s).toBeCloseTo(1000 - 400 * 0.2, 9);
  });
  it("gives charge back and uses the charging budget", () => {
    const moved = state(0.5);
    advancePack(pack, moved, createHeatFactors(), -30, 0.12, 300, 2);
    expect(moved.soc_frac).toBeCloseTo(0.5 + 60 / 36_000, 12);
    expect(moved.chargeUse_A2s).toBe(1000 + (900 - 400) * 2);
    expect(moved.dischargeUse_A2s).toBe(0);
  });
});
