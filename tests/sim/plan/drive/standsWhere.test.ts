import { describe, expect, it } from "vitest";
import { standsWhere } from "../../../../sim/plan/drive/standsWhere.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import type { Profile } from "../../../../sim/trace/trace.ts";
import { bareJob, type Changes, driven, steadyTrace, traceOf } from "../../../support/bareCar.ts";

/** 35 Nm are 700 N; 1400 kg on a sine of 0.1 ask 1373.4 N. */
const weak: Changes = { motor: { envelope: { kind: "peak", torque_Nm: 35, power_kW: 2000 } } };
const hill: Profile = { distance_m: Float64Array.of(0, 20, 1000), elevation_m: Float64Array.of(0, 0, 98) };

function stands(changes: Changes, trace: ReturnType<typeof steadyTrace>) {
  const job = bareJob(changes);
  const { channels } = driven(job, trace);
  const model = prepare(job, job.packs[0]);
  const found = standsWhere(model, trace, channels);
  expect(standsWhere(model, trace)).toEqual(found);
  return { found, channels };
}

describe("a car that comes to stand on a hill", () => {
  it("stands where it stopped, with what it needs and has there and what bounds that", () => {
    const { found, channels } = stands(weak, steadyTrace(5, 60, 1, hill));
    expect(found?.distance_km).toBeCloseTo((channels.distance_m.at(-1) ?? 0) / 1000, 12);
    expect(found?.distance_km).toBeGreaterThan(0.02);
    expect(found?.grade_ratio).toBeCloseTo(0.1 / Math.sqrt(0.99), 9);
    expect(found?.needed_Nm).toBeCloseTo(1373.4 / 20, 3);
    expect(found?.available_Nm).toBeCloseTo(35, 3);
    expect(found).toMatchObject({ gear: "only", limit: "motor" });
  });

  it("is told the gear in which it tries to start, not that in which it stopped", () => {
    const gears = [
      { name: "low", gear_ratio: 1.3, efficiency_frac: 1 },
      { name: "high", gear_ratio: 1, efficiency_frac: 1 },
    ];
    // From rest to 2 m/s the mean is 1 m/s, in the step in which it stops a little more: the change lies between.
    const shifting = { kind: "bySpeed" as const, gears: ["low", "high"], up_kmh: [3.61] };
    const { found, channels } = stands({ ...weak, driveline: { gears, shifting } }, steadyTrace(2, 60, 1, hill));
    const stop = channels.speed_mps.indexOf(0);
    expect(channels.gear[stop]).toBe(1);
    expect(found?.gear).toBe("low");
  });
});

describe("a car that does not start", () => {
  it("stands at the very beginning, on the slope that lies ahead", () => {
    const steep = { distance_m: Float64Array.of(0, 1000), elevation_m: Float64Array.of(0, 100) };
    const trace = steadyTrace(5, 20, 1, steep);
    const { found } = stands(weak, { ...trace, speed_mps: trace.speed_mps.map((mps, i) => (i === 0 ? 0 : mps)) });
    expect(found).toMatchObject({ distance_km: 0, gear: "only", limit: "motor" });
  });
  it("though its road asks for little: less than a metre a second", () => {
    const steep = { distance_m: Float64Array.of(0, 1000), elevation_m: Float64Array.of(0, 100) };
    const trace = steadyTrace(0.5, 20, 1, steep);
    const { found } = stands(weak, { ...trace, speed_mps: trace.speed_mps.map((mps, i) => (i === 0 ? 0 : mps)) });
    expect(found?.distance_km).toBe(0);
  });
  it("on the level has no slope", () => {
    const dead: Changes = {
      vehicle: { tyres: { loadedRadius_mm: 300, rolling_coeff: 0.02, followsTemperature: false } },
      controller: { min_V: 500, max_V: 900, regen: { isOn: false } },
    };
    const road = traceOf([
      [0, 0],
      [5, 20],
      [10, 20],
    ]);
    expect(stands(dead, road).found).toMatchObject({ distance_km: 0, grade_ratio: 0, available_Nm: 0 });
  });
  it("where its road asks it to go only in the last second", () => {
    const dead: Changes = { controller: { min_V: 500, max_V: 900, regen: { isOn: false } } };
    const road = traceOf([
      [0, 0],
      [9, 0],
      [10, 10],
    ]);
    expect(stands(dead, road).found).toMatchObject({ distance_km: 0, available_Nm: 0 });
  });
});

describe("nothing is told", () => {
  it("of a car that gets to the end", () => {
    expect(stands({}, steadyTrace(5, 60, 1, hill)).found).toBeUndefined();
  });
  it("of one that is merely slow", () => {
    const slow = { motor: { envelope: { kind: "peak" as const, torque_Nm: 80, power_kW: 3 } } };
    expect(stands(slow, steadyTrace(8, 60, 1, hill)).found).toBeUndefined();
  });
  it("of one that stands where its road asks it to", () => {
    const road = traceOf([
      [0, 0],
      [10, 36],
      [20, 0],
      [60, 0],
    ]);
    expect(stands({}, road).found).toBeUndefined();
  });
  it("of a car that has crossed the heights and stands beyond them, on what counts as level", () => {
    const short = { distance_m: Float64Array.of(0, 10), elevation_m: Float64Array.of(0, 0.01) };
    expect(stands({}, steadyTrace(5, 20, 1, short)).found).toBeUndefined();
  });
});
