import { describe, expect, it } from "vitest";
import { standingStart, timeTo_s } from "../../../../sim/plan/going/standingStart.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";

/** 700 N of thrust in a gear of 1, 2100 N in a gear of 3, on 1400 kg and nothing that resists. */
const motor = { envelope: { kind: "peak" as const, torque_Nm: 35, power_kW: 2000 } };
const gears = [
  { name: "low", gear_ratio: 3, efficiency_frac: 1 },
  { name: "high", gear_ratio: 1, efficiency_frac: 1 },
];
function start(changes: Changes, ramp_s = 0, duration_s = 40) {
  const job = bareJob({ motor, ...changes });
  return standingStart(prepare(job, job.packs[0]), duration_s, 0.05, ramp_s);
}

it("has a row for each step from rest", () => {
  const { time_s, speed_mps, distance_m } = start({}, 0, 2);
  expect([time_s, speed_mps, distance_m].map(({ length }) => length)).toEqual([41, 41, 41]);
  expect([time_s[0], speed_mps[0], distance_m[0]]).toEqual([0, 0, 0]);
  expect(time_s[40]).toBeCloseTo(2, 12);
  expect(speed_mps[40]).toBeCloseTo(1, 9);
  expect(distance_m[40]).toBeCloseTo(1, 9);
});

it("begins in the low gear and changes up at the speed of the car", () => {
  const changing = start({ driveline: { gears, shifting: { kind: "bySpeed", gears: ["low", "high"], up_kmh: [36] } } });
  // 1.5 m/s² up to 10 m/s, 0.5 m/s² from there, to within the step that changes.
  expect(timeTo_s(changing, 9)).toBeCloseTo(6, 6);
  expect(timeTo_s(changing, 15)).toBeGreaterThan(10 / 1.5 + 10 - 0.1);
  expect(timeTo_s(changing, 15)).toBeLessThan(10 / 1.5 + 10 + 0.05);
});

it("lets torque rise from none to full over the ramp", () => {
  // The ramp costs half its time.
  expect(timeTo_s(start({}, 2), 10)).toBeCloseTo(20 + 1, 3);
});

it("stays where it is on no torque at all", () => {
  const { distance_m } = start({ controller: { min_V: 500, regen: { isOn: false } } });
  expect(distance_m[distance_m.length - 1]).toBe(0);
});

describe("time to a speed", () => {
  const rows = {
    time_s: Float64Array.of(0, 1, 2),
    speed_mps: Float64Array.of(0, 4, 6),
    distance_m: new Float64Array(3),
  };
  it("lies on the straight line between two steps", () => expect(timeTo_s(rows, 5)).toBeCloseTo(1.5, 12));
  it("is none at rest", () => expect(timeTo_s(rows, 0)).toBe(0));
  it("is not there where the speed is not reached", () => expect(timeTo_s(rows, 6.1)).toBeUndefined());
});
