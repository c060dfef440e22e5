import { expect, it } from "vitest";
import { elevationAt_m, legAt } from "../../../sim/step/elevation.ts";

const profile = { distance_m: Float64Array.of(0, 100, 150, 400), elevation_m: Float64Array.of(10, 20, 15, 15) };

it("is straight between points and level before the first and beyond the last", () => {
  expect([-5, 0, 50, 100, 125, 300, 900].map((at) => elevationAt_m(profile, at, 0))).toEqual([
    10, 10, 15, 20, 17.5, 15, 15,
  ]);
});

it("finds the same height from any leg at or before the place", () => {
  for (const from of [0, 1, 2]) expect(elevationAt_m(profile, 200, from)).toBe(15);
});

it("moves to the next leg at its first point and stays on the last one beyond the end", () => {
  expect([0, 99.9, 100, 150, 1e6].map((at) => legAt(profile, at, 0))).toEqual([0, 0, 1, 2, 2]);
});
