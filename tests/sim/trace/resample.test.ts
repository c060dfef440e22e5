import fc from "fast-check";
import { expect, it } from "vitest";
import { distanceAlong_m } from "../../../sim/trace/distanceAlong.ts";
import { resample } from "../../../sim/trace/resample.ts";
import { cycleTrace } from "../../../sim/trace/standardCycles.ts";
import type { Trace } from "../../../sim/trace/trace.ts";
import { cycleTexts } from "../../support/cycleTexts.ts";

const ramp: Trace = {
  id: "ramp",
  title: "ramp",
  time_s: Float64Array.of(0, 1, 3, 4.5),
  speed_mps: Float64Array.of(0, 2, 6, 0),
};

it("puts rows on the straight lines between the samples", () => {
  const even = resample(ramp, 0.5);
  expect([...even.time_s]).toEqual([0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5]);
  [0, 1, 2, 3, 4, 5, 6, 4, 2, 0].forEach((speed_mps, i) => {
    expect(even.speed_mps[i]).toBeCloseTo(speed_mps, 12);
  });
});

it("keeps the last sample at its own time, after a shorter last step", () => {
  expect([...resample(ramp, 2).time_s]).toEqual([0, 2, 4, 4.5]);
  expect([...resample(ramp, 100).time_s]).toEqual([0, 4.5]);
});

it("makes no sliver of a step where the end is a multiple of it but for rounding", () => {
  const even = resample({ ...ramp, time_s: Float64Array.of(0, 0.1, 0.2, 0.30000000000000004) }, 0.1);
  expect(even.time_s).toHaveLength(4);
});

it("keeps the distance of a cycle where the step divides its seconds", () => {
  const trace = cycleTrace("wltc-class-3b", cycleTexts);
  for (const step_s of [1, 0.5, 0.1]) {
    const even = resample(trace, step_s);
    expect(even.time_s).toHaveLength(1800 / step_s + 1);
    const end_m = distanceAlong_m(even.time_s, even.speed_mps).at(-1) ?? 0;
    // Rounding only: the same straight lines are integrated.
    expect(Math.abs(end_m / (distanceAlong_m(trace.time_s, trace.speed_mps).at(-1) ?? 0) - 1)).toBeLessThan(1e-12);
  }
});

it("never leaves the range of the samples, and its times rise, for any step", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 6, noNaN: true }), (step_s) => {
      const even = resample(ramp, step_s);
      expect(even.time_s.at(-1)).toBe(4.5);
      for (let i = 0; i < even.time_s.length; i++) {
        if (i > 0) expect(even.time_s[i]).toBeGreaterThan(even.time_s[i - 1]);
        expect(even.speed_mps[i]).toBeGreaterThanOrEqual(0);
        expect(even.speed_mps[i]).toBeLessThanOrEqual(6);
      }
    }),
  );
});

it.each([0, -1, Number.NaN])("refuses a step of %s", (step_s) => {
  expect(() => resample(ramp, step_s)).toThrow("cannot be resampled");
});
