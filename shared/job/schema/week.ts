import * as z from "zod";
import { clock_h } from "../hoursOfDay.ts";
import { weekdayNames, weekdays } from "../weekdays.ts";
import { chargingFaults } from "../weekTimes.ts";
import { across } from "./across.ts";
import { Clock, Hours } from "./clock.ts";
import { above0, line } from "./number.ts";

const Weekday = z.enum(weekdays);

/** One drive by the clock, and where the car stands after it. */
const WeekTrip = z.strictObject({
  leaves: Clock,
  arrives: Clock,
  /** Id of a road of the job. */
  road: line,
  way: z.enum(["once", "back", "thereAndBack"]).default("once"),
  /** So many kilometres of the road in all, driven over and over where that is longer; the whole road where left out. */
  distance_km: above0(2000).optional(),
  /** Name of a supply of the job, where it is plugged in until it leaves again; it is not charged where left out. */
  parkedAt: line.optional(),
  /** Charged between these times alone, as where the lead goes in late or has to come out. */
  plugged: Hours.optional(),
});
export type WeekTrip = z.infer<typeof WeekTrip>;

const WeekDay = z
  .strictObject({
    /** The weekdays that it stands for, the first and the last. */
    from: Weekday,
    to: Weekday,
    /** In the client's words: the day to my sister. */
    name: z.string().trim().max(200).optional(),
    trips: z.array(WeekTrip).max(12).default([]),
  })
  .check(
    across(["from", "to"], ({ from, to }, fault) => {
      if (weekdays.indexOf(to) < weekdays.indexOf(from))
        fault(["to"], `found ${weekdayNames[from]} to ${weekdayNames[to]}, a last day not before the first wanted`);
    }),
    across(["trips.*.leaves", "trips.*.arrives"], ({ trips }, fault) => {
      trips.forEach(({ leaves, arrives }, i) => {
        if (clock_h(arrives) <= clock_h(leaves))
          fault(["trips", i, "arrives"], `found ${arrives} after leaving at ${leaves}, a later time of the day wanted`);
        const before = trips[i - 1];
        if (before && clock_h(leaves) < clock_h(before.arrives)) {
          const found = `found ${leaves}, while the trip before it is driven until ${before.arrives}`;
          fault(["trips", i, "leaves"], `${found}: trips one after the other wanted`);
        }
      });
    }),
    across(["trips.*.plugged", "trips.*.parkedAt"], ({ trips }, fault) => {
      trips.forEach(({ plugged, parkedAt }, i) => {
        if (plugged && parkedAt === undefined)
          fault(["trips", i, "parkedAt"], "found times of charging and no place, one of the places to charge wanted");
        if (plugged && plugged.from === plugged.to)
          fault(["trips", i, "plugged", "to"], `found ${plugged.from} to ${plugged.to}, an end later than that wanted`);
      });
    }),
  );
export type WeekDay = z.infer<typeof WeekDay>;

/** What the times of charging are worked out from. */
const timesRead = ["from", "to", "trips.*.leaves", "trips.*.arrives", "trips.*.plugged.from", "trips.*.plugged.to"].map(
  (key) => `days.*.${key}`,
);

/** A week as it is driven, time and again: days that are not in it the car stands. */
export const Week = z.strictObject({ days: z.array(WeekDay).max(7).default([]) }).check(
  across(["days.*.from", "days.*.to"], ({ days }, fault) => {
    days.forEach((day, i) => {
      const twice = weekdays.find((each) => isIn(day, each) && days.slice(0, i).some((before) => isIn(before, each)));
      if (twice) fault(["days", i, "from"], `found ${weekdayNames[twice]} in two days, each weekday once wanted`);
    });
  }),
  across(timesRead, ({ days }, fault) => {
    for (const { path, message } of chargingFaults(days)) fault(["days", ...path], message);
  }),
);
export type Week = z.infer<typeof Week>;

function isIn({ from, to }: Pick<WeekDay, "from" | "to">, weekday: (typeof weekdays)[number]): boolean {
  const place = weekdays.indexOf(weekday);
  return weekdays.indexOf(from) <= place && place <= weekdays.indexOf(to);
}

type Named = readonly (readonly [path: readonly (string | number)[], message: string])[];

/** Trips over a road that the job does not have. */
export function unknownRoads(week: Week | undefined, roads: readonly { readonly id: string }[]): Named {
  return tripsOf(week).flatMap(([path, { road }]) =>
    roads.some(({ id }) => id === road)
      ? []
      : [[[...path, "road"], `found "${road}", the id of one of the roads wanted`] as const],
  );
}

/** Trips after which the car stands at a supply that the job does not have. */
export function unknownSupplies(week: Week | undefined, supplies: readonly { readonly name: string }[]): Named {
  const names = supplies.map(({ name }) => name);
  const wanted =
    names.length > 0 ? `one of the places to charge wanted (${names.join("; ")})` : "and no place to charge is entered";
  return tripsOf(week).flatMap(([path, { parkedAt }]) =>
    parkedAt === undefined || names.includes(parkedAt)
      ? []
      : [[[...path, "parkedAt"], `found "${parkedAt}", ${wanted}`] as const],
  );
}

function tripsOf(week: Week | undefined) {
  return (week?.days ?? []).flatMap(({ trips }, day) =>
    trips.map((trip, i) => [["days", day, "trips", i], trip] as const),
  );
}
