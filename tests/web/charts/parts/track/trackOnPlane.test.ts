import { expect, it } from "vitest";
import { legOnPlane_m, onPlane } from "../../../../../web/charts/parts/track/trackOnPlane.ts";

// A degree on a sphere of 6,371,009 m is π/180 of its radius, 111,195 m; east and west it shrinks with the cosine of the latitude.
const DEGREE_m = 111_195;
const track = (longitude_deg: readonly number[], latitude_deg: readonly number[]) => ({
  longitude_deg: Float64Array.from(longitude_deg),
  latitude_deg: Float64Array.from(latitude_deg),
});

it("lays a track out in metres from its middle latitude and first longitude", () => {
  // From 59.5 to 60.5 degrees north: the middle is 60, where the cosine is a half.
  const { east_m, north_m, length_m } = onPlane(track([10, 10, 12], [59.5, 60.5, 60.5]));
  expect([...north_m].map((each_m) => Math.round(each_m / DEGREE_m / 0.01) * 0.01)).toEqual([-0.5, 0.5, 0.5]);
  expect(east_m[1]).toBe(0);
  expect(Math.abs(east_m[2] - DEGREE_m)).toBeLessThan(1); // two degrees at half their width; the degree above is rounded to a metre
  expect(Math.abs(length_m - 2 * DEGREE_m)).toBeLessThan(1);
});

it("keeps a track whole that crosses the date line, either way", () => {
  for (const [from, to, sign] of [
    [179.5, -179.5, 1],
    [-179.5, 179.5, -1],
  ] as const) {
    const { east_m } = onPlane(track([from, to], [0, 0]));
    expect(Math.abs(east_m[1] - sign * DEGREE_m)).toBeLessThan(1);
    expect(Math.abs(legOnPlane_m(track([from, to], [0, 0]), 0, 1) - DEGREE_m)).toBeLessThan(1);
  }
});

it("measures a leg at the latitude where it begins", () => {
  const leg_m = legOnPlane_m(track([0, 1], [60, 60]), 0, 1);
  expect(Math.abs(leg_m - DEGREE_m / 2)).toBeLessThan(1);
  // 0.003 and 0.004 degrees at the equator: five thousandths, by the right angle.
  expect(Math.abs(legOnPlane_m(track([0, 0.003], [0, 0.004]), 0, 1) - 0.005 * DEGREE_m)).toBeLessThan(0.01);
});
