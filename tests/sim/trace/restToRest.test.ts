import { expect, it } from "vitest";
import { characteristics } from "../../../sim/trace/characteristics.ts";
import { distanceAlong_m } from "../../../sim/trace/distanceAlong.ts";
import { fromRestToRest } from "../../../sim/trace/restToRest.ts";
import type { Profile, Trace } from "../../../sim/trace/trace.ts";

const trace = (time_s: number[], speed_mps: number[], profile?: Profile): Trace => ({
  id: "road",
  title: "road",
  time_s: Float64Array.from(time_s),
  speed_mps: Float64Array.from(speed_mps),
  ...(profile ? { profile } : {}),
});
const profile = (distance_m: number[], elevation_m: number[]): Profile => ({
  distance_m: Float64Array.from(distance_m),
  elevation_m: Float64Array.from(elevation_m),
});

it("returns a road from rest to rest as it is", () => {
  const whole = trace([0, 5, 9], [0, 10, 0]);
  expect(fromRestToRest(whole)).toBe(whole);
});

it("puts the way up from rest before a road that begins in motion, at 1 m/s2", () => {
  const road = fromRestToRest(trace([0, 5], [25, 0]));
  expect([...road.time_s]).toEqual([0, 25, 30]);
  expect([...road.speed_mps]).toEqual([0, 25, 0]);
  expect(road.restAdded).toEqual({ start_mps: 25, before_s: 25, before_m: 312.5, end_mps: 0, after_s: 0, after_m: 0 });
  expect(characteristics(road).distance_m).toBeCloseTo(312.5 + 62.5, 9);
});

it("puts the way down to rest after a road that ends in motion", () => {
  const road = fromRestToRest(trace([0, 5], [0, 20]));
  expect([...road.time_s]).toEqual([0, 5, 25]);
  expect([...road.speed_mps]).toEqual([0, 20, 0]);
  expect(road.restAdded).toMatchObject({ start_mps: 0, before_m: 0, end_mps: 20, after_s: 20, after_m: 200 });
});

it("takes noise below 0.01 m/s for rest", () => {
  const road = fromRestToRest(trace([0, 5, 9], [0.009, 10, 1e-300]));
  expect([...road.time_s]).toEqual([0, 5, 9]);
  expect([...road.speed_mps]).toEqual([0, 10, 0]);
  expect(road.restAdded).toBeUndefined();
});

it("moves the hills along with the road and keeps both stretches level", () => {
  const hilly = trace([0, 10], [10, 10], profile([0, 40, 90, 300], [5, 9, 8, 50]));
  const road = fromRestToRest(hilly);
  // 50 m before, 100 m of road, 50 m after; at 100 m the hills are 8 + 42 · 10 / 210 = 10 m high.
  expect([...(road.profile?.distance_m ?? [])]).toEqual([0, 50, 90, 140, 150, 200]);
  expect([...(road.profile?.elevation_m ?? [])]).toEqual([5, 5, 9, 8, 10, 10]);
  expect(distanceAlong_m(road.time_s, road.speed_mps).at(-1)).toBe(200);
});

it("leaves hills beyond a road that ends at rest as they are", () => {
  const road = fromRestToRest(trace([0, 10], [10, 0], profile([0, 300], [0, 30])));
  expect([...(road.profile?.distance_m ?? [])]).toEqual([0, 50, 350]);
  expect([...(road.profile?.elevation_m ?? [])]).toEqual([0, 0, 30]);
});
