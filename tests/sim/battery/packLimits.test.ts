import { describe, expect, it } from "vitest";
import { createPackLimits, type PackLimits, setPackLimits } from "../../../sim/battery/packLimits.ts";
import type { PackModel, PackState } from "../../../sim/battery/packModel.ts";
import { preparePack } from "../../../sim/battery/preparePack.ts";
import { bareJob, type Changes } from "../../support/bareCar.ts";

/** 100 V empty to 200 V full, 0.1 ohm of cells (twice that cold), a quarter more when charging, 0.02 ohm of leads. */
function pack(module: Changes["module"] = {}, changes: Changes["pack"] = {}): PackModel {
  const job = bareJob({
    module: {
      seriesCells: 50,
      capacity_Ah: 10,
      openCircuit: { soc_frac: [0, 1], cell_V: [2, 4] },
      resistance: { soc_frac: [0, 1], module_mohm: [100, 100] },
      resistanceByTemperature: { temperature_degC: [-15, 25], resistance_ratio: [2, 1] },
      charging_ratio: 1.25,
      discharge: { continuous_A: 50, peak_A: 100, peak_s: 10 },
      charge: { continuous_A: 20, peak_A: 40, peak_s: 10 },
      cellMin_V: 2,
      cellMax_V: 4.2,
      ...module,
    },
    pack: { leads_mohm: 20, ceiling_frac: 0.9, floor_frac: 0.1, ...changes },
  });
  return preparePack(job.packs[0], job.module);
}

function limits(model: PackModel, state: Partial<PackState> = {}, dt_s = 1): PackLimits {
  const found = createPackLimits();
  const usual = { soc_frac: 0.5, temperature_K: 298.15, dischargeUse_A2s: 0, chargeUse_A2s: 0 };
  setPackLimits(found, model, { ...usual, ...state }, dt_s);
  return found;
}

it("takes voltage and resistances from charge and temperature, leads apart from both", () => {
  expect(limits(pack()).openCircuit_V).toBe(150);
  expect(limits(pack()).discharge_ohm).toBeCloseTo(0.12, 12);
  expect(limits(pack()).charge_ohm).toBeCloseTo(0.145, 12);
  const cold = limits(pack(), { soc_frac: 1, temperature_K: 258.15 });
  expect(cold.openCircuit_V).toBe(200);
  expect(cold.discharge_ohm).toBeCloseTo(0.22, 12);
  expect(cold.charge_ohm).toBeCloseTo(0.27, 12);
});

describe("most power it gives", () => {
  it("is that at its peak current", () => expect(limits(pack()).discharge_W).toBeCloseTo(100 * (150 - 12), 9));
  it("is that at its continuous one with the budget used up", () => {
    expect(limits(pack(), { dischargeUse_A2s: 1e9 }).discharge_W).toBeCloseTo(50 * (150 - 6), 9);
  });
  it("is held by its lowest voltage", () => {
    // 104 V at rest, 100 V allowed: 4 V over 0.12 ohm.
    expect(limits(pack(), { soc_frac: 0.04 }).discharge_W).toBeCloseTo((4 / 0.12) * 100, 6);
  });
  it("falls between two temperatures, while what it would give cool stays", () => {
    const heat = { capacity_kJpK: 10, cooling_WpK: 0, derateFrom_degC: 40, derateTo_degC: 60 };
    const warm = limits(pack({ heat }), { temperature_K: 323.15 });
    expect(warm.coolDischarge_W).toBeCloseTo(100 * (150 - 0.12 * 100), 9);
    expect(warm.discharge_W).toBeCloseTo(50 * (150 - 0.12 * 50), 9);
    expect(limits(pack({ heat }), { temperature_K: 340 }).discharge_W).toBe(0);
  });
});

describe("most power it takes", () => {
  it("is what brings it to its ceiling by the interval's end, be that less than an ampere", () => {
    // 1e-5 of 36 000 C in a second.
    const full = limits(pack(), { soc_frac: 0.9 - 1e-5 });
    expect(full.charge_W).toBeCloseTo(-0.36 * (full.openCircuit_V + 0.145 * 0.36), 6);
  });
  it("is that at its peak current, below zero", () => {
    expect(limits(pack()).charge_W).toBeCloseTo(-40 * (150 + 0.145 * 40), 9);
  });
  it("is that at its continuous one with the budget used up", () => {
    expect(limits(pack(), { chargeUse_A2s: 1e9 }).charge_W).toBeCloseTo(-20 * (150 + 0.145 * 20), 9);
  });
  it("is held by its highest voltage", () => {
    const { charge_W } = limits(pack({ cellMax_V: 3.02 }));
    expect(charge_W).toBeCloseTo(-(1 / 0.145) * 151, 6);
  });
  it("is no more than fills it to its ceiling over the interval, and nothing above", () => {
    // 0.0005 of 36 000 C in 2 s: 9 A.
    expect(limits(pack(), { soc_frac: 0.8995 }, 2).charge_W).toBeCloseTo(-9 * (189.95 + 0.145 * 9), 3);
    expect(limits(pack(), { soc_frac: 0.9 }).charge_W).toBe(0);
    expect(limits(pack(), { soc_frac: 0.95 }).charge_W).toBe(0);
  });
  it("is nothing at and below the cold end, half between, all from the other end on", () => {
    const charge_W = (temperature_degC: number) =>
      limits(pack({ resistanceByTemperature: { temperature_degC: [-40, 80], resistance_ratio: [1, 1] } }), {
        temperature_K: temperature_degC + 273.15,
      }).charge_W;
    expect(charge_W(-10)).toBeCloseTo(0, 12);
    expect(charge_W(0)).toBeCloseTo(0, 12);
    expect(charge_W(5)).toBeCloseTo(-20 * (150 + 0.145 * 20), 6);
    expect(charge_W(10)).toBeCloseTo(-40 * (150 + 0.145 * 40), 6);
  });
  it("falls where it is warm", () => {
    const heat = { capacity_kJpK: 10, cooling_WpK: 0, derateFrom_degC: 40, derateTo_degC: 60 };
    expect(limits(pack({ heat }), { temperature_K: 323.15 }).charge_W).toBeCloseTo(-20 * (150 + 0.145 * 20), 9);
  });
});
