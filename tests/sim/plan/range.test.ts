import { describe, expect, it } from "vitest";
import { rangeOn } from "../../../sim/plan/range.ts";
import { endsElsewhere, returnTrip } from "../../../sim/plan/returnTrip.ts";
import { prepare } from "../../../sim/step/prepare.ts";
import type { Trace } from "../../../sim/trace/trace.ts";
import { bareJob, type Changes, traceOf } from "../../support/bareCar.ts";

/** 300 N all the way: a pack of 400 V and half of 1 Ah holds 720 kJ, 2400 m of that. */
const small: Changes = {
  vehicle: { roadLoad: { kind: "coastDown", f0_N: 300, f1_Npkmh: 0, f2_Npkmh2: 0, mass_kg: 1400 } },
  controller: { regen: { isOn: true, fadeNone_kmh: 0, fadeFull_kmh: 0 } },
  module: { capacity_Ah: 1 },
  pack: { floor_frac: 0.25, ceiling_frac: 0.75 },
};
const rangeWith = (changes: Changes, trace: Trace) => {
  const job = bareJob({ ...small, ...changes });
  return rangeOn(prepare(job, job.packs[0]), trace);
};
/** 100 m and back to rest. */
const lap = traceOf([
  [0, 0],
  [10, 36],
  [20, 0],
]);

describe("a road over and over", () => {
  it("goes on to the floor, the last step cut in proportion", () => {
    const { distance_m, end } = rangeWith({}, lap);
    expect(end).toBe("floor");
    // What it has in motion where it stops short is on the way: less than one speeding up.
    expect(distance_m).toBeGreaterThan(2400 - 70_000 / 300);
    expect(distance_m).toBeLessThanOrEqual(2400 + 1e-6);
  });

  it("ends where a whole repetition covers less than half of its road", () => {
    const { end, distance_m } = rangeWith(
      { motor: { envelope: { kind: "peak", torque_Nm: 16, power_kW: 2000 } } },
      lap,
    );
    expect(end).toBe("stuck");
    expect(distance_m).toBeGreaterThan(0);
    expect(distance_m).toBeLessThan(50);
  });

  it("ends after a day: at least so far", () => {
    const { end, distance_m } = rangeWith(
      { vehicle: {}, module: { capacity_Ah: 2000 } },
      {
        ...traceOf([
          [0, 36],
          [3600, 36],
        ]),
      },
    );
    expect(end).toBe("time");
    expect(distance_m).toBeCloseTo(24 * 36_000, 3);
  });
});

describe("a road that ends elsewhere", () => {
  const uphill: Trace = {
    ...lap,
    profile: { distance_m: Float64Array.of(0, 40, 100), elevation_m: Float64Array.of(0, 10, 25) },
  };

  it("is one that ends more than 20 m above or below its start", () => {
    expect(endsElsewhere(uphill)).toBe(true);
    const level = { distance_m: Float64Array.of(0, 100), elevation_m: Float64Array.of(0, 20) };
    expect(endsElsewhere({ ...lap, profile: level })).toBe(false);
    expect(endsElsewhere(lap)).toBe(false);
  });

  it("is driven there and back, so that a road that climbs too far goes further than one that only just does not", () => {
    const climbing = (height_m: number): Trace => ({
      ...lap,
      profile: { distance_m: Float64Array.of(0, 100), elevation_m: Float64Array.of(0, height_m) },
    });
    // Over and over, 19 m in 100 m take 2609 N beside the 300 N: 248 m of road, a little less or more by where it stops.
    const repeated_m = rangeWith({}, climbing(19)).distance_m;
    expect(repeated_m).toBeGreaterThan(200);
    expect(repeated_m).toBeLessThan(300);
    expect(rangeWith({}, climbing(25)).distance_m).toBeGreaterThan(4 * repeated_m);
  });

  it("comes home over the same heights in reverse, at the same speeds in reverse", () => {
    const home = returnTrip(uphill);
    expect([...home.time_s]).toEqual([0, 10, 20]);
    expect([...home.speed_mps]).toEqual([0, 10, 0]);
    expect([...(home.profile?.distance_m ?? [])]).toEqual([0, 60, 100]);
    expect([...(home.profile?.elevation_m ?? [])]).toEqual([25, 10, 0]);
  });

  it("is level where its profile ends before the road", () => {
    const short: Trace = {
      ...lap,
      profile: { distance_m: Float64Array.of(0, 60), elevation_m: Float64Array.of(0, 30) },
    };
    const { profile } = returnTrip(short);
    expect([...(profile?.distance_m ?? [])]).toEqual([0, 40, 100]);
    expect([...(profile?.elevation_m ?? [])]).toEqual([30, 30, 0]);
  });
});
