import { S_PER_DAY } from "../../../shared/units.ts";
import { writeDate } from "../log/writeTime.ts";
import type { Place } from "./findPlaces.ts";
import type { Parking, Trips } from "./splitTrips.ts";

/** One local day of the log; days without a trip between the first and the last are there with nothing driven. */
export interface Day {
  /** `YYYY-MM-DD` in local time. */
  readonly date: string;
  /** Indexes of the trips that begin on this day. */
  readonly trips: readonly number[];
  readonly distance_m: number;
  readonly driving_s: number;
  readonly climb_m: number;
  /** The longest parking that begins on this day, as long as it lasts, overnight too: when the car can charge. */
  readonly longestParking?: { readonly from_s: number; readonly to_s: number; readonly place: string };
}

/** What was driven each local day, and the longest time parked with where that was (as far as places are known). */
export function summariseDays(found: Trips, utcOffset_s: number, places: readonly Place[] = []): readonly Day[] {
  const dayOf = (time_s: number) => Math.floor((time_s + utcOffset_s) / S_PER_DAY);
  const starts = [...found.trips.map((trip) => trip.start_s), ...found.parkings.map((parking) => parking.from_s)];
  if (found.trips.length === 0) {
    return [];
  }
  const first = starts.reduce((least, time_s) => Math.min(least, dayOf(time_s)), Number.POSITIVE_INFINITY);
  const last = starts.reduce((most, time_s) => Math.max(most, dayOf(time_s)), Number.NEGATIVE_INFINITY);
  const days: Day[] = [];
  for (let day = first; day <= last; day++) {
    const trips = found.trips.flatMap((trip, i) => (dayOf(trip.start_s) === day ? [i] : []));
    const own = trips.map((i) => found.trips[i].characteristics);
    const parkings = found.parkings.filter((parking) => dayOf(parking.from_s) === day);
    const longest = parkings.reduce<Parking | undefined>((a, b) => (a && lasts_s(a) >= lasts_s(b) ? a : b), undefined);
    const summary = {
      date: writeDate(day * S_PER_DAY),
      trips,
      distance_m: own.reduce((sum, one) => sum + one.distance_m, 0),
      driving_s: own.reduce((sum, one) => sum + one.duration_s, 0),
      climb_m: own.reduce((sum, one) => sum + (one.climb_m ?? 0), 0),
    };
    days.push(
      longest
        ? { ...summary, longestParking: { ...spanOf(longest), place: placeOf(longest, found, places) } }
        : summary,
    );
  }
  return days;
}

/**
 * Local time less UTC as the longitude suggests it, in whole hours: a guess to be shown and changed, since borders and
 * summer time are not in it. 0 where there are no positions.
 */
export function guessUtcOffset_s(longitude_deg: ArrayLike<number>): number {
  for (let i = 0; i < longitude_deg.length; i++) {
    if (!Number.isNaN(longitude_deg[i])) {
      return Math.round(longitude_deg[i] / 15) * 3600;
    }
  }
  return 0;
}

function lasts_s(parking: Parking): number {
  return parking.to_s - parking.from_s;
}

function spanOf(parking: Parking): { readonly from_s: number; readonly to_s: number } {
  return { from_s: parking.from_s, to_s: parking.to_s };
}

function placeOf(parking: Parking, found: Trips, places: readonly Place[]): string {
  const index = found.parkings.indexOf(parking);
  return places.find((place) => place.parkings.includes(index))?.label ?? "unknown";
}
