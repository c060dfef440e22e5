import { describe, expect, it } from "vitest";
import { drivenLow, hillTrace, longHillOf } from "../../../../sim/plan/currents/courses.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, steadyTrace } from "../../../support/bareCar.ts";
import { flatPack } from "../../../support/chargeable.ts";

describe("the long hill of a job", () => {
  const hill = (requirement: Parameters<typeof longHillOf>[0]["requirement"]) => longHillOf({ requirement });
  it("is assumed only where the job names neither gradient nor length", () => {
    expect(hill({})).toEqual({ grade_ratio: 0.06, length_km: 8, speed_kmh: 50, isAssumed: true });
    expect(hill({ longHill_ratio: 0.1 })).toMatchObject({ grade_ratio: 0.1, length_km: 8, isAssumed: false });
    expect(hill({ longHill_km: 3 })).toMatchObject({ grade_ratio: 0.06, length_km: 3, isAssumed: false });
  });
});

describe("the long hill as a trace", () => {
  const trace = hillTrace({ grade_ratio: 0.75, length_km: 1, speed_kmh: 36, isAssumed: false });
  it("pulls away at 1 m/s2 and goes on at its speed for as long as its length takes", () => {
    expect(Array.from(trace.speed_mps.slice(0, 12))).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 10]);
    // 1000 m at 10 m/s: 100 s, a sample a second from 0 on.
    expect(trace.time_s).toHaveLength(101);
    expect(trace.time_s[100]).toBe(100);
  });
  it("rises by the sine of its slope: 3 in 4 along the level is 3 in 5 along the road", () => {
    const { distance_m, elevation_m } = trace.profile ?? { distance_m: [], elevation_m: [] };
    expect((elevation_m[1] - elevation_m[0]) / (distance_m[1] - distance_m[0])).toBeCloseTo(0.6, 12);
    expect(distance_m[1]).toBeGreaterThan(1000);
  });
  it("has two seconds at least", () => {
    expect(hillTrace({ grade_ratio: 0.1, length_km: 0.001, speed_kmh: 50, isAssumed: false }).time_s).toHaveLength(3);
  });
});

describe("a trace driven from a low pack", () => {
  // 0.01 of 1400 kg rolls: 137.34 N at 20 m/s for 1000 s are 2.7468 MJ of a pack of so many kWh, all of it usable.
  const used_J = 0.01 * 1400 * 9.81 * 20_000;
  const from = (energy_kWh: number, floor_frac = 0) => {
    const job = bareJob({
      module: flatPack(energy_kWh).module ?? {},
      pack: { ceiling_frac: 1, floor_frac },
      vehicle: { tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false } },
    });
    return drivenLow(prepare(job, job.packs[0]), steadyTrace(20, 1000, 1)).soc_frac[0];
  };
  it("begins with a third of its window where the road takes less", () => {
    expect(from(20)).toBeCloseTo(1 / 3, 9);
    expect(from(20, 0.1)).toBeCloseTo(0.1 + 0.3, 9);
  });
  it("begins with a tenth more than the road takes where that is more than a third", () => {
    expect(from(1.2)).toBeCloseTo((1.1 * used_J) / (1.2 * 3.6e6), 3);
  });
  it("begins full where the road takes more than the pack has", () => {
    expect(from(0.7)).toBe(1);
  });
});
