import { describe, expect, it } from "vitest";
import { heatLines } from "../../../../sim/plan/heat/heatLines.ts";
import { heatStudy } from "../../../../sim/plan/heat/heatStudy.ts";
import { bareJob, type Changes, traceOf } from "../../../support/bareCar.ts";

/** 1400 kg on a hill of a fifth (3-4-5: sine 0.28), 2 km of it at 50 km/h: what the shaft gives on one climb, pulling away included. */
const GRADE_ratio = 7 / 24;
const work_J = 1400 * 9.81 * 0.28 * 2000 + 0.5 * 1400 * (50 / 3.6) ** 2;
const level = traceOf([
  [0, 0],
  [10, 36],
  [110, 36],
]);
const heat = { capacity_kJpK: 400, cooling_WpK: 0, derateFrom_degC: 240, derateTo_degC: 250 };

function linesOf(changes: Changes) {
  const job = { ...bareJob(changes), requirement: { longHill_ratio: GRADE_ratio, longHill_km: 2 } };
  const { hill, courses } = heatStudy(job, 0, level);
  const [road, climbs] = heatLines(job, 0, level, hill);
  return { road, climbs, courses };
}

describe("motor and pack along the hot day", () => {
  it("warm the motor by all that it loses on five climbs, nothing being cooled away, and never cool it", () => {
    const { climbs, courses } = linesOf({ motor: { loss: { kind: "flat", efficiency_frac: 0.8 }, heat } });
    const motor_K = climbs.motor_K ?? [];
    // Of 80 % a quarter of the shaft's power is lost; rows of a second cut the corner where the hill turns down.
    const rise_K = motor_K[motor_K.length - 1] - motor_K[0];
    expect(Math.abs(rise_K / ((5 * 0.25 * work_J) / 400_000) - 1)).toBeLessThan(0.015);
    for (let i = 1; i < motor_K.length; i++) expect(motor_K[i]).toBeGreaterThanOrEqual(motor_K[i - 1]);
    expect(Math.max(...motor_K) - 273.15).toBeCloseTo(courses[1].motor_degC ?? Number.NaN, 6);
    expect(climbs).toMatchObject({ times: 5, isEmpty: false });
    expect(climbs.rated_frac).toBeUndefined();
  });

  it("drive the road five times on end, one clock for all of them", () => {
    const { road } = linesOf({ motor: { heat } });
    expect(road.times).toBe(5);
    expect(road.time_s[road.time_s.length - 1]).toBeCloseTo(5 * 110, 9);
    expect(road.motor_K).toHaveLength(road.time_s.length);
    for (let i = 1; i < road.time_s.length; i++) expect(road.time_s[i]).toBeGreaterThan(road.time_s[i - 1]);
  });

  it("have the half hour's share of the maker's rating where nothing else is known of the motor", () => {
    const { climbs } = linesOf({ motor: { rating: { continuous_kW: 20 } } });
    const share = climbs.rated_frac ?? [];
    // Five climbs last less than half an hour: at their end all of their work lies within it.
    expect(climbs.time_s[climbs.time_s.length - 1]).toBeLessThan(1800);
    expect(Math.abs(share[share.length - 1] / ((5 * work_J) / 1800 / 20_000) - 1)).toBeLessThan(0.015);
    expect(share[0]).toBe(0);
    expect(climbs.motor_K).toBeUndefined();
    expect(climbs.pack_K).toBeUndefined();
  });

  it("have the pack as warm as the air at first, and warmed by what its resistance takes, where it is known how it warms", () => {
    const resistance = { soc_frac: [0, 1], module_mohm: [1000, 1000] };
    const { climbs } = linesOf({ module: { heat, resistance } });
    const pack_K = climbs.pack_K ?? [];
    expect(pack_K).toHaveLength(climbs.time_s.length);
    expect(pack_K[0]).toBeCloseTo(35 + 273.15, 9);
    expect(pack_K[pack_K.length - 1]).toBeGreaterThan(pack_K[0] + 0.1);
    expect(climbs.motor_K).toBeUndefined();
  });
});
