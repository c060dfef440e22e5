import type { Problem } from "../../../shared/problems.ts";
import type { CleanedLog, Place, Routes, Trips } from "../../../sim/index.ts";
import type { CycleKinds } from "./cycleKinds.ts";
import type { Clock } from "./driveClock.ts";
import type { DayRow, Drive, TripRow } from "./roadsApi.ts";

/** A cleaned log with its trips, days and places. */
export interface Sorted {
  readonly cleaned: CleanedLog;
  readonly found: Trips;
  readonly places: readonly Place[];
  readonly days: ReturnType<Routes["summariseDays"]>;
}

/** Splits a cleaned log where it stands longer than given, and sorts the trips into local days. */
export function sortOut(routes: Routes, cleaned: CleanedLog, parkedLonger_s: number, utcOffset_s: number): Sorted {
  const found = routes.splitTrips(cleaned, { parkedLonger_s });
  const places = routes.findPlaces(found.parkings, utcOffset_s);
  // Places go by their number, so that the page may call them what it likes.
  const numbered = places.map((place, i) => ({ ...place, label: String(i) }));
  return { cleaned, found, places, days: routes.summariseDays(found, utcOffset_s, numbered) };
}

/** What the page is given of a cleaned log. */
export function driveOf(
  routes: Routes,
  { cleaned, found, places, days }: Sorted,
  problems: readonly Problem[],
  clock: Clock,
  kinds: CycleKinds,
): Drive {
  const local = (time_s: number) => new Date(Math.round(time_s + clock.offset_s) * 1000).toISOString();
  const titles = new Map(routes.standardCycles.map(({ id, title }) => [id, title]));
  const trips = found.trips.map((trip): TripRow => {
    const { distance_m, duration_s, mean_mps, max_mps, climb_m, stops } = trip.characteristics;
    const [like] = routes.standardCycleLike(trip.characteristics, kinds);
    const start = local(trip.start_s);
    return {
      date: start.slice(0, 10),
      clock: start.slice(11, 16),
      distance_m,
      duration_s,
      mean_mps,
      max_mps,
      stops,
      ...(climb_m !== undefined && { climb_m }),
      like: like ? (titles.get(like.id) ?? like.id) : "",
      difference: like?.difference ?? "",
      bridged_frac: trip.bridged_frac,
    };
  });
  const rows = days.map(({ date, trips: own, distance_m, driving_s, climb_m, longestParking }): DayRow => {
    const place = Number(longestParking?.place ?? "unknown");
    return {
      date,
      trips: own.length,
      distance_m,
      driving_s,
      climb_m,
      ...(longestParking && {
        parked: {
          from: local(longestParking.from_s).slice(11, 16),
          long_s: longestParking.to_s - longestParking.from_s,
          ...(Number.isInteger(place) && { place }),
        },
      }),
    };
  });
  return {
    kind: "drive",
    problems,
    repairs: cleaned.repairs,
    quality: cleaned.quality,
    isStill: cleaned.isStill,
    hasPositions: cleaned.track !== undefined,
    hasHeights: cleaned.quality.heightSource === "recorded",
    utcOffset_s: clock.offset_s,
    offsetFrom: clock.from,
    trips,
    days: rows,
    places: places.map(({ label, parked_s, parkings }) => ({ label, parked_s, times: parkings.length })),
  };
}
