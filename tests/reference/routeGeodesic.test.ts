import { describe, expect, it } from "vitest";
import { geodesicLeg } from "../../sim/route/log/geodesicLeg.ts";

// Lengths on the WGS84 ellipsoid, computed with Vincenty's formula apart from the library used here; the first two are
// published examples of geodesics. Tolerance: half of the last printed digit. [Karney2013]
const pairs: readonly (readonly [string, number, number, number, number, number, number])[] = [
  ["across the Atlantic", 40.6, -73.8, 51.6, -0.5, 5_551_759.4, 5e-4],
  ["half round the world", 37.87622, -122.23558, -9.4047, 147.1597, 10_700_471.9552, 1e-3],
  ["one degree of latitude from the equator", 0, 8, 1, 8, 110_574.389, 5e-4],
  ["one degree of the equator", 0, 8, 0, 9, 111_319.491, 5e-4],
  ["one degree of latitude from 50 north", 50, 8, 51, 8, 111_238.681, 5e-4],
  ["one degree of longitude at 50 north", 50, 8, 50, 9, 71_695.22, 5e-3],
  ["a ten-thousandth of latitude at 52 north", 52, 8, 52.0001, 8, 11.126735, 5e-6],
  ["a ten-thousandth of longitude at 52 north", 52, 8, 52, 8.0001, 6.867802, 5e-6],
];

describe("the length between two positions", () => {
  it.each(pairs)("%s", (_, fromLat_deg, fromLon_deg, toLat_deg, toLon_deg, expected_m, tolerance_m) => {
    const { length_m } = geodesicLeg(fromLat_deg, fromLon_deg, toLat_deg, toLon_deg);
    expect(Math.abs(length_m - expected_m)).toBeLessThan(tolerance_m);
  });

  it("over the date line is the short way", () => {
    expect(geodesicLeg(0, 179.9, 0, -179.9).length_m).toBeCloseTo(0.2 * 111_319.491, 0);
  });
});
