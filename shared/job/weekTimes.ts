import { clock_h } from "./hoursOfDay.ts";
import type { Hours } from "./schema/clock.ts";
import { type Weekday, weekdayNames, weekdays } from "./weekdays.ts";

const DAY_h = 24;
export const WEEK_h = 7 * DAY_h;

/** What of a day its times hang on. */
interface TimedDay {
  readonly from: Weekday;
  readonly to: Weekday;
  readonly trips: readonly {
    readonly leaves: string;
    readonly arrives: string;
    readonly plugged?: Hours | undefined;
  }[];
}

/** A trip at its place in the week, and the time parked after it. Hours count from Monday 0:00; those of the last parking go on into the next week. */
export interface TimedTrip {
  /** Places in the lists of the week: which day, and which of its trips. */
  readonly day: number;
  readonly trip: number;
  readonly weekday: Weekday;
  readonly leaves_h: number;
  readonly arrives_h: number;
  /** When the car leaves for the trip after it. */
  readonly nextLeaves_h: number;
  /** From when to when it may charge, were it parked for as long; all of the parking where no times are given. */
  readonly plugged_h: readonly [from_h: number, to_h: number];
}

/** Every trip of a week in order of time, each for every weekday that its day stands for. The week has passed its schema. */
export function timedTrips(days: readonly TimedDay[]): TimedTrip[] {
  const trips = weekdays.flatMap((weekday, place) => {
    const day = days.findIndex(({ from, to }) => weekdays.indexOf(from) <= place && place <= weekdays.indexOf(to));
    return (days[day]?.trips ?? []).map(({ leaves, arrives, plugged }, trip) => ({
      day,
      trip,
      weekday,
      plugged,
      leaves_h: place * DAY_h + clock_h(leaves),
      arrives_h: place * DAY_h + clock_h(arrives),
    }));
  });
  return trips.map(({ plugged, ...each }, i) => {
    const nextLeaves_h = trips[i + 1]?.leaves_h ?? (trips[0]?.leaves_h ?? 0) + WEEK_h;
    const plugged_h = plugged ? spanAfter_h(each.arrives_h, plugged) : ([each.arrives_h, nextLeaves_h] as const);
    return { ...each, nextLeaves_h, plugged_h };
  });
}

/** What is wrong with the times of charging: where they begin at their first after an arrival, the car must stand until they end. */
export function chargingFaults(
  days: readonly TimedDay[],
): readonly { readonly path: readonly (string | number)[]; readonly message: string }[] {
  const faults = timedTrips(days).flatMap(({ day, trip, weekday, nextLeaves_h, plugged_h: [, to_h] }) => {
    const plugged = days[day]?.trips[trip]?.plugged;
    if (!plugged || plugged.from === plugged.to || to_h <= nextLeaves_h) return [];
    const found = `found charging from ${plugged.from} to ${plugged.to} after a trip of ${weekdayNames[weekday]}`;
    const message = `${found}, but the car is driven from ${dayAndTime(nextLeaves_h)} on: times at which it stands wanted`;
    return [{ path: [day, "trips", trip, "plugged"], message }];
  });
  return faults.filter(({ path }, i) => faults.findIndex((other) => String(other.path) === String(path)) === i);
}

/** A moment of the week as people say it: Thursday 17:50. Hours since Monday 0:00, also of the week after. */
export function dayAndTime(at_h: number): string {
  const { weekday, time } = momentOf(at_h);
  return `${weekdayNames[weekday]} ${time}`;
}

/** Day and time of a moment, to the minute. */
export function momentOf(at_h: number): { readonly weekday: Weekday; readonly time: string } {
  const minutes = Math.round(at_h * 60);
  const inDay = minutes % (DAY_h * 60);
  const weekday = weekdays[Math.floor(minutes / (DAY_h * 60)) % weekdays.length] ?? "monday";
  return { weekday, time: `${Math.floor(inDay / 60)}:${String(inDay % 60).padStart(2, "0")}` };
}

/** The first time at or after an hour at which a span of the day begins, and its end. */
function spanAfter_h(after_h: number, { from, to }: Hours): readonly [number, number] {
  const midnight_h = Math.floor(after_h / DAY_h) * DAY_h;
  const today_h = midnight_h + clock_h(from);
  const from_h = today_h < after_h ? today_h + DAY_h : today_h;
  const length_h = (clock_h(to) - clock_h(from) + DAY_h) % DAY_h;
  return [from_h, from_h + length_h];
}
