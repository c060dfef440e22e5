import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { findPlaces } from "../../../../sim/route/trips/findPlaces.ts";
import { splitTrips } from "../../../../sim/route/trips/splitTrips.ts";
import { madeLog } from "../../../logs/madeFixes.ts";
import { far_m, found, leg, MONDAY_s } from "./weekByHand.ts";

describe("a week", () => {
  it("falls into its trips, each with its distance, time and stops", () => {
    expect(found.trips.length).toBe(4);
    for (const trip of found.trips) {
      // The made speeds by the trapezoid rule: 15 m/s for 570 s and two ramps of 15 s.
      expect(trip.characteristics.distance_m / (15 * 585)).toBeCloseTo(1, 2);
      expect(trip.characteristics.max_mps).toBeCloseTo(15, 0);
      expect(trip.stopsPerKm).toBe(0);
    }
    expect(found.trips[0].characteristics.climb_m).toBeGreaterThan(80);
    expect(found.trips[1].characteristics.climb_m).toBeLessThan(1);
  });

  it("has its parkings at two places, called home and work", () => {
    expect(found.parkings.length).toBe(3);
    const places = findPlaces(found.parkings, 0);
    expect(places.map(({ label }) => label).sort()).toEqual(["home", "work"]);
    const home = places.find(({ label }) => label === "home");
    expect(home?.parkings).toEqual([1]);
  });
});

describe("stops", () => {
  const withStop = (stand_s: number) => {
    const first = leg(MONDAY_s, 0, 1);
    const stand = Array.from({ length: stand_s }, (_, i) => ({
      time_s: MONDAY_s + 601 + i,
      north_m: far_m,
      speed_mps: 0,
      elevation_m: 100,
    }));
    return cleanLog(madeLog([...first, ...stand, ...leg(MONDAY_s + 601 + stand_s, far_m, 1)]));
  };

  it("shorter than the time set do not split a trip, longer ones do", () => {
    const cleaned = withStop(300);
    expect(splitTrips(cleaned).trips.length).toBe(2);
    const whole = splitTrips(cleaned, { parkedLonger_s: 600 });
    expect(whole.trips.length).toBe(1);
    expect(whole.trips[0].characteristics.stops).toBe(1);
  });

  it("have a time to set within bounds", () => {
    expect(() => splitTrips(withStop(300), { parkedLonger_s: 5 })).toThrow(/30 to 7200 s/);
  });
});
