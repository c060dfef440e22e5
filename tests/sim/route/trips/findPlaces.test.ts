import { describe, expect, it } from "vitest";
import { findPlaces } from "../../../../sim/route/trips/findPlaces.ts";
import type { Parking } from "../../../../sim/route/trips/splitTrips.ts";

const H_s = 3600;

describe("places", () => {
  const parked = (from_h: number, to_h: number, latitude_deg: number): Parking => ({
    from_s: from_h * H_s,
    to_s: to_h * H_s,
    isGap: true,
    latitude_deg,
    longitude_deg: 8,
  });

  it("take in parkings within 200 m and number those that are neither home nor work", () => {
    const places = findPlaces(
      [parked(20, 31, 50), parked(33, 41, 50.1), parked(42, 42.5, 50.2), parked(44, 55, 50.001)],
      0,
    );
    expect(places.map(({ label, parkings }) => [label, parkings])).toEqual([
      ["home", [0, 3]],
      ["work", [1]],
      ["place 1", [2]],
    ]);
  });

  it("are none of them home where the log has no night", () => {
    const places = findPlaces([parked(33, 41, 50), parked(42, 42.5, 50.2)], 0);
    expect(places.map(({ label }) => label)).toEqual(["work", "place 1"]);
  });

  it("leave out parkings without a position", () => {
    expect(findPlaces([parked(20, 31, Number.NaN)], 0)).toEqual([]);
  });
});
