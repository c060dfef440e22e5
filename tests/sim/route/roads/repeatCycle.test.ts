import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { repeatCycleToDistance } from "../../../../sim/route/roads/repeatCycle.ts";
import { characteristics } from "../../../../sim/trace/characteristics.ts";
import type { Trace } from "../../../../sim/trace/trace.ts";
import { cycleSpeeds_mps } from "../../../support/cycleSpeeds.ts";

const cycle = (id: string): Trace => {
  const speeds = cycleSpeeds_mps(id);
  return { id, title: id, time_s: Float64Array.from(speeds, (_, i) => i), speed_mps: Float64Array.from(speeds) };
};

describe("a cycle repeated to a distance", () => {
  it.each([
    ["udds", 5000],
    ["udds", 37_000],
    ["wltc-class-3b", 61_234.5],
    ["nedc", 300],
  ])("%s to %f m ends there, at rest", (id, distance_m) => {
    const trace = repeatCycleToDistance(cycle(id), distance_m);
    expect(characteristics(trace).distance_m).toBeCloseTo(distance_m, 6);
    expect(trace.speed_mps[trace.speed_mps.length - 1]).toBe(0);
    for (let i = 1; i < trace.time_s.length; i++) {
      expect(trace.time_s[i]).toBeGreaterThan(trace.time_s[i - 1]);
    }
  });

  it("is the cycle itself until it is cut", () => {
    const whole = cycle("udds");
    const trace = repeatCycleToDistance(whole, 30_000);
    expect([...trace.speed_mps.slice(0, 1370)]).toEqual([...whole.speed_mps]);
    expect([...trace.speed_mps.slice(1370, 1600)]).toEqual([...whole.speed_mps.slice(1, 231)]);
  });

  it("refuses distances and traces that make no sense", () => {
    expect(() => repeatCycleToDistance(cycle("udds"), 5)).toThrow(InputError);
    const moving = { ...cycle("udds"), speed_mps: new Float64Array(1370).fill(5) };
    expect(() => repeatCycleToDistance(moving, 5000)).toThrow(/at rest/);
  });
});
