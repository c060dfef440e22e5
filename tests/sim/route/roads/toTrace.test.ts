import { expect, it } from "vitest";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { toTrace, wholeTrace } from "../../../../sim/route/roads/toTrace.ts";
import { madeLog } from "../../../logs/madeFixes.ts";
import { cleaned, far_m, found, week } from "../trips/weekByHand.ts";

it("a week becomes one trace that holds no position and no date", () => {
  const trace = wholeTrace(found.trips, "week", "a week");
  expect(Object.keys(trace).sort()).toEqual(["id", "profile", "speed_mps", "time_s", "title"]);
  expect(Object.keys(trace.profile ?? {}).sort()).toEqual(["distance_m", "elevation_m"]);
  expect(trace.time_s[0]).toBe(0);
  expect(trace.time_s[trace.time_s.length - 1]).toBe(trace.time_s.length - 1);
  const { distance_m } = trace.profile ?? { distance_m: new Float64Array(1) };
  expect(distance_m[0]).toBe(0);
  expect(distance_m[distance_m.length - 1] / (4 * 15 * 585)).toBeCloseTo(1, 2);
});

it("a week keeps the heights of the trips that have them, level through the others, and says for how much of the way", () => {
  const [out, back] = found.trips;
  const bare = { speed_mps: back.speed_mps, elevation_m: back.elevation_m.map(() => Number.NaN) };
  const { profile } = wholeTrace([bare, out, bare, back], "week", "a week");
  const elevation_m = profile?.elevation_m ?? new Float64Array(1);
  const distance_m = profile?.distance_m ?? new Float64Array(1);
  const at_m = (legs: number) => elevation_m[distance_m.findIndex((each_m) => each_m >= legs * far_m)];
  const rise_m = out.elevation_m[out.elevation_m.length - 1] - out.elevation_m[0];
  expect(rise_m).toBeGreaterThan(50);
  // Level: but for the rounding of sums of heights of some hundred metres. Risen: but for points 10 m of road apart.
  expect(at_m(0.9)).toBeCloseTo(at_m(0), 9);
  expect(at_m(2.1) - at_m(0.9)).toBeCloseTo(rise_m, 0);
  expect(at_m(2.9)).toBeCloseTo(at_m(2.1), 9);
  expect(elevation_m[elevation_m.length - 1]).toBeCloseTo(out.elevation_m[0], 0);

  expect(wholeTrace([bare, bare], "week", "a week").profile).toBeUndefined();

  const half = week.map((row, i) => (i < 601 || i >= 1202 ? row : { ...row, elevation_m: Number.NaN }));
  // one of four equal legs is without
  expect(cleanLog(madeLog(half)).quality.reasons.join("; ")).toMatch(
    /no heights on 25 % of the way: it counts as flat/,
  );
  expect(cleaned.quality.reasons.join("; ")).not.toMatch(/heights/);
});

it("makes a trace of each trip from rest to rest", () => {
  const trace = toTrace(found.trips[0], "monday", "Monday out");
  expect(trace.speed_mps[0]).toBeLessThan(0.5);
  expect(trace.speed_mps[trace.speed_mps.length - 1]).toBeLessThan(0.5);
});
