import { expect, it } from "vitest";
import { elevationAt_m, profileAlong } from "../../../sim/trace/profileAlong.ts";

it("makes one point of rows at one place, at their mean height", () => {
  const profile = profileAlong(Float64Array.of(0, 0, 0, 10, 20, 20), Float64Array.of(3, 4, 5, 6, 8, 9));
  expect([...(profile?.distance_m ?? [])]).toEqual([0, 10, 20]);
  expect([...(profile?.elevation_m ?? [])]).toEqual([4, 6, 8.5]);
});

it("is no road where the car never moves", () => {
  expect(profileAlong(Float64Array.of(0, 0), Float64Array.of(3, 4))).toBeUndefined();
});

it("is a straight line between points and level beyond both ends", () => {
  const profile = { distance_m: Float64Array.of(0, 10, 30), elevation_m: Float64Array.of(100, 110, 100) };
  const places_m = [-5, 0, 2.5, 10, 25, 30, 99];
  expect(places_m.map((place_m) => elevationAt_m(profile, place_m))).toEqual([100, 100, 102.5, 110, 102.5, 100, 100]);
});
