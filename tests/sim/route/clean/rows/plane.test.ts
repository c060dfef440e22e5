import { expect, it } from "vitest";
import { layOut } from "../../../../../sim/route/clean/rows/plane.ts";

// An arc of one second of latitude and of longitude on the equator of WGS84: a (1 − e²) and a, times a radian.
const SECOND_rad = Math.PI / 180 / 3600;
const A_m = 6_378_137;
const E2 = 0.00669438;

it("lays positions out east and north of the first one", () => {
  const { east_m, north_m } = layOut(Float64Array.of(0, 1 / 3600, 1 / 3600), Float64Array.of(8, 8, 8 + 1 / 3600));
  expect([...east_m].map((each) => Math.round(each * 1e3) / 1e3 + 0)).toEqual([0, 0, round(A_m * SECOND_rad)]);
  expect(north_m[1]).toBeCloseTo(A_m * (1 - E2) * SECOND_rad, 4);
  expect(north_m[2]).toBeCloseTo(north_m[1], 4);
});

function round(value: number): number {
  return Math.round(value * 1e3) / 1e3;
}

it("goes on over the date line, and over rows without a position", () => {
  const longitudes = Float64Array.of(Number.NaN, 180 - 1 / 3600, Number.NaN, -180 + 1 / 3600);
  const { east_m } = layOut(Float64Array.of(Number.NaN, 0, Number.NaN, 0), longitudes);
  expect(east_m[0]).toBeNaN();
  expect(east_m[1]).toBe(0);
  expect(east_m[2]).toBeNaN();
  expect(east_m[3]).toBeCloseTo(2 * A_m * SECOND_rad, 4);
});
