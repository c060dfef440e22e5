import { describe, expect, it } from "vitest";
import { cleanLog } from "../../../../sim/route/clean/cleanLog.ts";
import { toTrace, wholeTrace } from "../../../../sim/route/roads/toTrace.ts";
import { findPlaces } from "../../../../sim/route/trips/findPlaces.ts";
import { type Parking, splitTrips } from "../../../../sim/route/trips/splitTrips.ts";
import { guessUtcOffset_s, summariseDays } from "../../../../sim/route/trips/summariseDays.ts";
import { madeLog } from "../../../logs/madeFixes.ts";

const H_s = 3600;
const MONDAY_s = Date.UTC(2024, 3, 29) / 1000;

/** A drive of 600 s at up to 15 m/s with recorded speeds, north where `sense` is 1, back where -1; about 8.6 km. */
function leg(start_s: number, from_m: number, sense: 1 | -1) {
  let north_m = from_m;
  return Array.from({ length: 601 }, (_, i) => {
    const speed_mps = Math.max(0, Math.min(15, i, 600 - i));
    north_m += sense * speed_mps;
    return { time_s: start_s + i, north_m, speed_mps, elevation_m: 100 + north_m / 100 };
  });
}
const far_m = leg(0, 0, 1)[600].north_m;
/** Two days of home to work at 8:00 and back at 17:00, the logger off in between. */
const week = [0, 24].flatMap((day) => [
  ...leg(MONDAY_s + (day + 8) * H_s, 0, 1),
  ...leg(MONDAY_s + (day + 17) * H_s, far_m, -1),
]);

describe("a week", () => {
  const cleaned = cleanLog(madeLog(week));
  const found = splitTrips(cleaned);

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

  it("sums up by local day, with the longest parking and where it was", () => {
    const days = summariseDays(found, 0, findPlaces(found.parkings, 0));
    expect(days.map(({ date }) => date)).toEqual(["2024-04-29", "2024-04-30"]);
    expect(days[0].trips).toEqual([0, 1]);
    expect(days[0].distance_m / (2 * 15 * 585)).toBeCloseTo(1, 2);
    expect(days[0].longestParking?.place).toBe("home"); // overnight, longer than the day at work
    expect(days[1].longestParking?.place).toBe("work");
  });

  it("moves trips to another day where local time says so", () => {
    const days = summariseDays(found, -9 * H_s);
    expect(days[0].date).toBe("2024-04-28");
  });

  it("becomes one trace that holds no position and no date", () => {
    const trace = wholeTrace(found.trips, "week", "a week");
    expect(Object.keys(trace).sort()).toEqual(["id", "profile", "speed_mps", "time_s", "title"]);
    expect(Object.keys(trace.profile ?? {}).sort()).toEqual(["distance_m", "elevation_m"]);
    expect(trace.time_s[0]).toBe(0);
    expect(trace.time_s[trace.time_s.length - 1]).toBe(trace.time_s.length - 1);
    const { distance_m } = trace.profile ?? { distance_m: new Float64Array(1) };
    expect(distance_m[0]).toBe(0);
    expect(distance_m[distance_m.length - 1] / (4 * 15 * 585)).toBeCloseTo(1, 2);
  });

  it("keeps the heights of the trips that have them, level through the others, and says for how much of the way", () => {
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

it("guesses local time from the longitude in whole hours", () => {
  expect(guessUtcOffset_s([Number.NaN, 8.4])).toBe(H_s);
  expect(guessUtcOffset_s([-118])).toBe(-8 * H_s);
  expect(guessUtcOffset_s([])).toBe(0);
});
