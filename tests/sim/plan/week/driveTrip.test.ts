import { describe, expect, it } from "vitest";
import type { WeekTrip } from "../../../../shared/job/schema/week.ts";
import { asked_m, driveTrip, weekRoad } from "../../../../sim/plan/week/driveTrip.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { createRunContext } from "../../../../sim/step/runContext.ts";
import type { Trace } from "../../../../sim/trace/trace.ts";
import { bareJob, evenSlope } from "../../../support/bareCar.ts";
import { flatPack } from "../../../support/chargeable.ts";

const job = bareJob({
  ...flatPack(100),
  vehicle: { tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false } },
});
const model = prepare(job, job.packs[0]);
const WEIGHT_N = 1400 * 9.81;
/** 20 km from rest to rest, at 20 m/s but for 200 m at 1 m/s2 at either end: 1020 s. Level, or rising by so many metres. */
const speed_mps = Float64Array.from({ length: 1021 }, (_, i) => Math.min(20, i, 1020 - i));
const level: Trace = { id: "road", title: "road", time_s: speed_mps.map((_, i) => i), speed_mps };
const rising = (rise_m: number): Trace => ({ ...level, profile: evenSlope(rise_m / 20_000, 20_000) });

function driven(trip: Pick<WeekTrip, "way" | "distance_km">, trace: Trace) {
  const context = createRunContext(model, 0.9);
  const marks: [number, number][] = [];
  const totals = driveTrip(context, model, weekRoad(trace), trip, 8, (at_h, soc_frac) => marks.push([at_h, soc_frac]));
  return { totals, marks, soc_frac: context.state.pack.soc_frac };
}
/** What a trip rose by altogether, in metres. */
const climbed_m = (...of: Parameters<typeof driven>) => driven(...of).totals.ledger.climb_J / WEIGHT_N;

describe("a road of the week", () => {
  it("is closed where it ends within 0.2 m in a kilometre as high as it begins", () => {
    expect(weekRoad(level)).toMatchObject({ length_m: 20_000, isClosed: true });
    expect([3.9, -3.9, 4.1, -4.1].map((rise_m) => weekRoad(rising(rise_m)).isClosed)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
  it("is as long as the trip asks: one way, both, or so many kilometres whichever way", () => {
    const road = weekRoad(level);
    expect(asked_m({ way: "once" }, road)).toBe(20_000);
    expect(asked_m({ way: "back" }, road)).toBe(20_000);
    expect(asked_m({ way: "thereAndBack" }, road)).toBe(40_000);
    expect(asked_m({ way: "thereAndBack", distance_km: 5 }, road)).toBe(5000);
  });
});

describe("a trip over a road that is closed", () => {
  it("goes as far as it asks, over and over where that is more than the road", () => {
    for (const [trip, distance_m] of [
      [{ way: "once" }, 20_000],
      [{ way: "thereAndBack" }, 40_000],
      [{ way: "once", distance_km: 50 }, 50_000],
      [{ way: "back", distance_km: 7 }, 7000],
    ] as const) {
      const { totals, soc_frac } = driven(trip, level);
      // Where it is cut off within the road the car comes to rest on its last metres: to half a metre.
      expect(Math.abs(totals.distance_m - distance_m)).toBeLessThan(0.5);
      // Rolling, and the speed of every leg, which the brakes take, less what rolling takes of it; steps of a second.
      const legs = Math.ceil(distance_m / 20_000);
      const leg_J = 0.5 * 1400 * 20 ** 2 - 0.01 * WEIGHT_N * 200;
      expect((0.9 - soc_frac) * 100).toBeCloseTo((0.01 * WEIGHT_N * distance_m + legs * leg_J) / 3.6e6, 1);
    }
  });
  it("is drawn at the end of every leg, at its own time from the departure on", () => {
    expect(driven({ way: "thereAndBack" }, level).marks.map(([at_h]) => at_h)).toEqual([
      expect.closeTo(8 + 1020 / 3600, 6),
      expect.closeTo(8 + 2040 / 3600, 6),
    ]);
  });
});

describe("a trip over a road that rises by 100 m", () => {
  const road = rising(100);
  it("rises with it on the way out and falls on the way back", () => {
    expect(climbed_m({ way: "once" }, road)).toBeCloseTo(100, 1);
    expect(climbed_m({ way: "back" }, road)).toBeCloseTo(-100, 1);
    expect(climbed_m({ way: "thereAndBack" }, road)).toBeCloseTo(0, 1);
  });
  it("of a part of it begins at home, or as far out as the kilometres reach", () => {
    expect(climbed_m({ way: "once", distance_km: 5 }, road)).toBeCloseTo(25, 1);
    expect(climbed_m({ way: "back", distance_km: 5 }, road)).toBeCloseTo(-25, 1);
    expect(climbed_m({ way: "thereAndBack", distance_km: 10 }, road)).toBeCloseTo(0, 1);
  });
  it("beyond its length turns round at either end", () => {
    // Out 20 km and back 10; back 20 and out 10; there and back and there again.
    expect(climbed_m({ way: "once", distance_km: 30 }, road)).toBeCloseTo(50, 0);
    expect(climbed_m({ way: "back", distance_km: 30 }, road)).toBeCloseTo(-50, 0);
    expect(climbed_m({ way: "thereAndBack", distance_km: 60 }, road)).toBeCloseTo(100, 0);
  });
  it("is drawn within a leg, some twelve times and where it is lowest", () => {
    const { marks, soc_frac } = driven({ way: "once" }, road);
    expect(marks.length).toBeGreaterThan(11);
    expect(marks.length).toBeLessThan(16);
    expect(marks.at(-1)).toEqual([expect.closeTo(8 + 1020 / 3600, 6), soc_frac]);
    for (const [at_h] of marks) expect(at_h).toBeGreaterThanOrEqual(8);
  });
});

describe("a car that cannot", () => {
  it("ends where its pack is empty", () => {
    const small = bareJob({ ...flatPack(1), vehicle: { tyres: job.vehicle.tyres } });
    const empty = prepare(small, small.packs[0]);
    const totals = driveTrip(
      createRunContext(empty, 0.5),
      empty,
      weekRoad(level),
      { way: "thereAndBack" },
      8,
      () => {},
    );
    expect(totals.reachedFloor).toBe(true);
    // Half a kilowatt-hour, less the 280 kJ of its speed, over 137.34 N.
    expect(Math.abs(totals.distance_m - (0.5 * 3.6e6 - 280_000) / (0.01 * WEIGHT_N))).toBeLessThan(20);
  });
  it("ends where it covers less than half of a leg", () => {
    const weak = {
      ...job,
      motor: { ...job.motor, envelope: { kind: "peak" as const, torque_Nm: 10_000, power_kW: 1 } },
    };
    const slow = prepare(weak, weak.packs[0]);
    // A kilowatt over 137.34 N is 7.3 m/s of the 20: one leg, and none home.
    const totals = driveTrip(createRunContext(slow, 0.9), slow, weekRoad(level), { way: "thereAndBack" }, 8, () => {});
    expect(totals.distance_m).toBeGreaterThan(7000);
    expect(totals.distance_m).toBeLessThan(10_000);
  });
});
