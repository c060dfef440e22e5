import fc from "fast-check";
import { expect, it } from "vitest";
import { characteristics } from "../../../sim/trace/characteristics.ts";
import { mergeFineSamples } from "../../../sim/trace/mergeFineSamples.ts";
import type { Trace } from "../../../sim/trace/trace.ts";

const trace = (time_s: ArrayLike<number>, speed_mps: ArrayLike<number>): Trace => ({
  id: "road",
  title: "road",
  time_s: Float64Array.from(time_s),
  speed_mps: Float64Array.from(speed_mps),
});
/** `count` samples a millisecond apart. */
const milliseconds = (count: number, speed_mps: (i: number) => number) =>
  trace(
    Array.from({ length: count }, (_, i) => i / 1000),
    Array.from({ length: count }, (_, i) => speed_mps(i)),
  );

it("returns a road at ten samples a second as it is, whatever rounding does to its times", () => {
  const road = trace(
    Array.from({ length: 50 }, (_, i) => i * 0.1),
    new Float64Array(50),
  );
  expect(mergeFineSamples(road)).toBe(road);
});

it("keeps no two samples of a recording at 1000 Hz nearer than 0.1 s, and its first and last", () => {
  const road = mergeFineSamples(milliseconds(1051, (i) => i / 100));
  expect(road.time_s).toHaveLength(11);
  for (let i = 1; i < road.time_s.length; i++) {
    expect(road.time_s[i] - road.time_s[i - 1]).toBeGreaterThan(0.0999);
  }
  expect(road.time_s.at(-1)).toBe(1.05);
  expect(road.speed_mps[0]).toBe(0);
  expect(road.speed_mps.at(-1)).toBe(10.5);
});

it("keeps a straight line straight", () => {
  const road = mergeFineSamples(milliseconds(2001, (i) => 3 + i / 100));
  road.time_s.forEach((time_s, i) => {
    expect(road.speed_mps[i]).toBeCloseTo(3 + 10 * time_s, 9);
  });
});

it("averages noise instead of picking from it", () => {
  // Up and down by 1 m/s each millisecond: what is left is a hundredth of it.
  const road = mergeFineSamples(milliseconds(2001, (i) => 10 + (i % 2 === 0 ? 1 : -1)));
  for (const speed_mps of road.speed_mps.subarray(1, -1)) expect(Math.abs(speed_mps - 10)).toBeLessThan(0.02);
});

it("leaves coarse samples beside fine ones as they are", () => {
  const road = mergeFineSamples(trace([0, 1, 2, 2.05, 2.1, 3], [0, 5, 7, 9, 8, 0]));
  expect([...road.time_s]).toEqual([0, 1, 2, 2.1, 3]);
  // The sample before and the one after the dropped one: means over ±0.05 s.
  expect(road.speed_mps[1]).toBe(5);
  expect(road.speed_mps[2]).toBeCloseTo(0.5 * (0.5 * (6.9 + 7) + 0.5 * (7 + 9)), 12);
  expect(road.speed_mps[4]).toBe(0);
});

it("keeps distance within a hundredth of a per cent on any fine road that is not all noise", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { minLength: 4, maxLength: 12 }),
      fc.double({ min: 0.003, max: 0.06, noNaN: true }),
      (corners_mps, step_s) => {
        // Corners ten seconds apart, sampled finely.
        const rows = Math.floor(((corners_mps.length - 1) * 10) / step_s);
        const speedAt_mps = (t_s: number) => {
          const i = Math.min(Math.floor(t_s / 10), corners_mps.length - 2);
          return corners_mps[i] + (corners_mps[i + 1] - corners_mps[i]) * (t_s / 10 - i);
        };
        const times_s = Array.from({ length: rows + 1 }, (_, i) => i * step_s);
        const fine = trace(times_s, times_s.map(speedAt_mps));
        const before_m = characteristics(fine).distance_m;
        const after_m = characteristics(mergeFineSamples(fine)).distance_m;
        expect(Math.abs(after_m - before_m)).toBeLessThanOrEqual(1e-4 * before_m + 0.05);
      },
    ),
    { numRuns: 50 },
  );
});
