import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readTypedRoad } from "../../../../sim/route/roads/readTypedRoad.ts";
import { typedRoad } from "../../../../sim/route/roads/typedRoad.ts";
import { characteristics } from "../../../../sim/trace/characteristics.ts";

describe("a road typed from memory", () => {
  it("climbs as far as its hills say, the lowest point at 0 m", () => {
    // sin(atan(1/7)) = 1/sqrt(50)
    const { profile } = typedRoad(readTypedRoad("100 m at 30 km/h, then 80 m down 1 in 7, then 80 m up 1 in 7"));
    expect(Array.from(profile?.distance_m ?? [])).toEqual([0, 100, 180, 260]);
    const drop_m = 80 / Math.sqrt(50);
    const heights = Array.from(profile?.elevation_m ?? []).map((each_m) => Number(each_m.toFixed(9)));
    expect(heights).toEqual([drop_m, drop_m, 0, drop_m].map((each_m) => Number(each_m.toFixed(9))));
    expect(typedRoad(readTypedRoad("1 km at 30 km/h")).profile).toBeUndefined();
  });

  it("becomes a trace with exactly its distance and its stops", () => {
    const trace = typedRoad(readTypedRoad("3 km at 50 km/h, 2 stops a km, then 10 km at 80 km/h"));
    const found = characteristics(trace);
    expect(found.distance_m).toBeCloseTo(13_000, 6);
    expect(found.stops).toBe(6);
    expect(found.stop_s).toBeCloseTo(6 * 15, 9);
    expect(found.max_mps).toBeCloseTo(80 / 3.6, 12);
    expect(found.maxAcceleration_mps2).toBeCloseTo(0.9, 6);
    expect(found.maxDeceleration_mps2).toBeCloseTo(1, 6);
  });

  it("keeps its distance, from rest to rest, whatever the legs are", () => {
    const leg = fc.record({
      distance_m: fc.double({ min: 10, max: 20_000, noNaN: true }),
      speed_mps: fc.double({ min: 1, max: 50, noNaN: true }),
      stopsPerKm: fc.double({ min: 0, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(leg, { minLength: 1, maxLength: 5 }), (legs) => {
        const trace = typedRoad(legs);
        const wanted_m = legs.reduce((sum, one) => sum + one.distance_m, 0);
        const found = characteristics(trace);
        expect(Math.abs(found.distance_m - wanted_m)).toBeLessThan(1e-6 * wanted_m);
        expect(trace.speed_mps[0]).toBe(0);
        expect(Math.abs(trace.speed_mps[trace.speed_mps.length - 1])).toBeLessThan(1e-6);
        expect(found.maxAcceleration_mps2).toBeLessThan(0.9 + 1e-6);
        expect(trace.time_s.every((time_s, i) => i === 0 || time_s > trace.time_s[i - 1])).toBe(true);
        expect(trace.speed_mps.every((speed_mps) => speed_mps >= 0)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
