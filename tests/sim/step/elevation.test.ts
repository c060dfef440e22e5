import { describe, expect, it } from "vitest";
import { elevationAt_m, legAt, slopeOver } from "../../../sim/step/elevation.ts";

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

describe("the slope of a way", () => {
  it("is its rise over its length, climbing or falling", () => {
    expect(slopeOver(2, 20, profile, 0)).toBeCloseTo(0.1, 12);
    expect(slopeOver(-2, 20, profile, 0)).toBeCloseTo(-0.1, 12);
  });
  it("of hardly any length is that of the leg it lies on, since the heights' rounding is no slope", () => {
    // Ten metres up on a hundred, five down on fifty, level.
    for (const length_m of [0, 1e-9, 1e-6])
      expect([0, 1, 2].map((leg) => slopeOver(1e-9, length_m, profile, leg))).toEqual([0.1, -0.1, 0]);
    expect(slopeOver(1e-7, 2e-6, profile, 2)).toBeCloseTo(0.05, 12);
  });
  it("is never as steep as a wall", () => {
    expect(slopeOver(50, 10, profile, 0)).toBe(0.99);
    expect(slopeOver(-50, 10, profile, 0)).toBe(-0.99);
  });
});
