import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { layHillsUnder } from "../../../../sim/route/roads/layHillsUnder.ts";
import { characteristics } from "../../../../sim/trace/characteristics.ts";
import type { Trace } from "../../../../sim/trace/trace.ts";
import { cycleSpeeds_mps } from "../../../support/cycleSpeeds.ts";

const cycle = (id: string): Trace => {
  const speeds = cycleSpeeds_mps(id);
  return { id, title: id, time_s: Float64Array.from(speeds, (_, i) => i), speed_mps: Float64Array.from(speeds) };
};

describe("hills laid under a trace", () => {
  const hills = { distance_m: Float64Array.of(0, 1000, 3000), elevation_m: Float64Array.of(100, 140, 110) };

  it("longer than the hills go back and forth over them, without a jump", () => {
    const laid = layHillsUnder(cycle("udds"), hills);
    const profile = laid.profile ?? { distance_m: new Float64Array(), elevation_m: new Float64Array() };
    const found = characteristics(cycle("udds"));
    expect(profile.distance_m[profile.distance_m.length - 1]).toBeCloseTo(found.distance_m, 6);
    for (let i = 1; i < profile.elevation_m.length; i++) {
      const rise_m = Math.abs(profile.elevation_m[i] - profile.elevation_m[i - 1]);
      expect(rise_m).toBeLessThanOrEqual(0.04 * (profile.distance_m[i] - profile.distance_m[i - 1]) + 1e-9);
    }
    // 11.99 km over hills of 3 km: there and back twice, but for the last metres; 70 m up on each lap of 6 km.
    expect(characteristics(laid).climb_m).toBeGreaterThan(2 * 70 - 2);
    expect(characteristics(laid).climb_m).toBeLessThan(2 * 70 + 2);
  });

  it("refuse a profile that goes nowhere", () => {
    const flat = { distance_m: Float64Array.of(0, 0), elevation_m: Float64Array.of(1, 2) };
    expect(() => layHillsUnder(cycle("udds"), flat)).toThrow(InputError);
  });
});
