import { describe, expect, it } from "vitest";
import { refusedBraking } from "../../../../sim/plan/findings/refusedBraking.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { run } from "../../../../sim/step/run.ts";
import { bareJob, type Changes, evenSlope, steadyTrace } from "../../../support/bareCar.ts";

/** Down a slope of 4 % at 10 m/s: 549.36 N push, 100 N resist, 449.36 N are left to brake with: 4.49 kW, 124.8 Wh a kilometre. */
const braking: Changes = {
  vehicle: { roadLoad: { kind: "coastDown", f0_N: 100, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
  controller: { min_V: 0, max_V: 1500, regen: { isOn: true, fadeNone_kmh: 0, fadeFull_kmh: 0 } },
};
const push_N = 1400 * 9.81 * 0.04 - 100;
/** 400 V and 20 Ah: a hundredth of its charge is 80 Wh. */
const module = { capacity_Ah: 20 };

function refused(changes: Changes, length_m = 1000) {
  const job = bareJob({ ...braking, ...changes, module: { ...module, ...changes.module } });
  const model = prepare(job, job.packs[0]);
  const trace = steadyTrace(10, length_m / 10, 1, evenSlope(-0.04, length_m));
  return refusedBraking(model, trace, run(model, trace).totals);
}

describe("braking that a full pack refuses", () => {
  const full = { pack: { ceiling_frac: 1, floor_frac: 0.5 } };

  it("is all of it from the ceiling on, with the charge to begin with from which the pack takes it", () => {
    const { full: found, cold } = refused(full);
    expect(found?.energy_Wh).toBeCloseTo((push_N * 1000) / 3600, 3);
    expect(found?.distance_km).toBeCloseTo(1, 9);
    // 124.8 Wh are 1.56 hundredths.
    expect(found?.start_frac).toBeCloseTo(0.98, 12);
    expect(cold).toBeUndefined();
  });
  it("is what comes after the charge that braking may take the pack to", () => {
    const { full: found } = refused({ pack: { ceiling_frac: 0.9, regenTo_frac: 0.905, floor_frac: 0.5 } });
    // Half a hundredth is 40 Wh, 320.5 m of the hill.
    expect(found?.energy_Wh).toBeCloseTo((push_N * 1000) / 3600 - 40, 3);
    expect(Math.abs((found?.distance_km ?? 0) - (1 - 0.144 / (push_N / 1000)))).toBeLessThan(0.0101);
    expect(found?.start_frac).toBeCloseTo(0.89, 12);
  });
  it("is not worth a word below 5 Wh, neither in all nor from a charge to begin with", () => {
    expect(refused(full, 30).full).toBeUndefined();
    expect(refused(full, 50).full?.energy_Wh).toBeCloseTo((push_N * 50) / 3600, 3);
    // 82.4 Wh: a hundredth less takes 80 of them.
    expect(refused(full, 660).full?.start_frac).toBeCloseTo(0.99, 12);
    // 86.1 Wh.
    expect(refused(full, 690).full?.start_frac).toBeCloseTo(0.98, 12);
  });
  it("has no charge to begin with where there is none above the floor", () => {
    expect(refused({ pack: { ceiling_frac: 0.95, floor_frac: 0.925 } }).full?.start_frac).toBeCloseTo(0.93, 12);
    const narrow = refused({ pack: { ceiling_frac: 0.95, floor_frac: 0.935 } }).full;
    expect(narrow?.energy_Wh).toBeGreaterThan(100);
    expect(narrow).not.toHaveProperty("start_frac");
  });
  it("is also what its highest voltage refuses, or the controller's", () => {
    const rising = { openCircuit: { soc_frac: [0, 1], cell_V: [3, 4] } };
    const pack = { ceiling_frac: 0.9, regenTo_frac: 1, floor_frac: 0.1 };
    // 390 V at the ceiling, at which no current may go in.
    expect(refused({ pack, module: { ...rising, cellMax_V: 3.9 } }).full?.distance_km).toBeCloseTo(1, 9);
    expect(refused({ pack, module: rising }).full).toBeUndefined();
    const held = { ...braking.controller, max_V: 390 };
    expect(refused({ pack, module: rising, controller: held }).full?.distance_km).toBeCloseTo(1, 9);
  });
  it("is none of a motor that does not brake", () => {
    const off = { min_V: 0, max_V: 1500, regen: { isOn: false } };
    expect(refused({ ...full, controller: off })).toEqual({});
  });
});

describe("braking that a cold pack refuses", () => {
  const cold = (pack_degC: number) =>
    refused({
      pack: { ceiling_frac: 0.8, regenTo_frac: 1 },
      module: { coldCharge: { none_degC: 0, full_degC: 10 }, charge: { continuous_A: 20, peak_A: 20, peak_s: 0 } },
      environment: { pack_degC },
    });

  it("is what its lower current leaves, where that is more than a tenth", () => {
    // Half of 20 A at 400 V: 4 of 4.49 kW.
    const { cold: found, full } = cold(5);
    expect(found?.energy_Wh).toBeCloseTo(((push_N * 10 - 4000) * 100) / 3600, 3);
    expect(found?.distance_km).toBeCloseTo(1, 9);
    expect(full).toBeUndefined();
    // 4.24 kW are more than nine tenths: something is missing, but nowhere much of it.
    expect(cold(5.3).cold?.distance_km).toBe(0);
  });
  it("is all of it at and below the temperature at which the cells take none", () => {
    expect(cold(0).cold?.energy_Wh).toBeCloseTo((push_N * 1000) / 3600, 3);
  });
  it("is none where the cells take enough, or all", () => {
    expect(cold(6).cold).toBeUndefined();
    expect(cold(10).cold).toBeUndefined();
  });
});
