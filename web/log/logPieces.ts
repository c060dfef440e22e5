import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../shared/units.ts";
import type { Brought, DayRow, Drive, Piece, TripRow } from "../worker/roads/roadsApi.ts";
import { dayWords } from "./logText.ts";

/** A part of a log that can be looked at and made into a road. */
export interface PieceChoice {
  readonly key: Piece;
  readonly words: string;
  /** What a road made of it is called: nothing of where or when, since it goes into the job file. */
  readonly title: string;
}

/** The whole, every day with a drive where there are several, and every trip where there are several. */
export function pieceChoices(
  { days, trips }: Pick<Drive, "days"> & { readonly trips: readonly Pick<TripRow, "date" | "clock" | "distance_m">[] },
  units: UnitHabit,
): readonly PieceChoice[] {
  const far = (distance_m: number) => writeQuantity("distance", distance_m / M_PER_KM, units);
  const driven = days.filter((day) => day.trips > 0);
  const whole_m = trips.reduce((sum, trip) => sum + trip.distance_m, 0);
  const whole: PieceChoice = {
    key: "whole",
    words: `the whole log, ${far(whole_m)}`,
    title: `Client's own road, ${far(whole_m)}`,
  };
  const perDay = driven.map((day) => ({
    key: `day:${day.date}`,
    words: `${dayWords(day.date)}, ${far(day.distance_m)}`,
    title: `Client's own day, ${far(day.distance_m)}`,
  }));
  const perTrip = trips.map((trip, i) => ({
    key: `trip:${i}`,
    words: `trip ${i + 1}, ${dayWords(trip.date)} ${trip.clock}, ${far(trip.distance_m)}`,
    title: `Client's own trip, ${far(trip.distance_m)}`,
  }));
  return [whole, ...(perDay.length > 1 ? perDay : []), ...(perTrip.length > 1 ? perTrip : [])];
}

/** The day in the middle by distance, of the days with a drive; of two middle ones the longer. */
export function medianDay({ days }: Pick<Drive, "days">): DayRow | undefined {
  const driven = days.filter((day) => day.trips > 0).sort((a, b) => a.distance_m - b.distance_m);
  return driven[Math.floor(driven.length / 2)];
}

export function longestDay({ days }: Pick<Drive, "days">): DayRow | undefined {
  return days.reduce<DayRow | undefined>(
    (most, day) => (day.distance_m > (most?.distance_m ?? 0) ? day : most),
    undefined,
  );
}

/** What is looked at first: the usual day where there are several, else the whole. */
export function firstPiece({ outcome }: Brought): Piece {
  if (outcome.kind !== "drive" || outcome.days.filter((day) => day.trips > 0).length < 2) return "whole";
  const day = medianDay(outcome);
  return day ? `day:${day.date}` : "whole";
}

export function isPieceOf({ outcome }: Brought, piece: Piece): boolean {
  return outcome.kind === "drive" && pieceChoices(outcome, "metric").some(({ key }) => key === piece);
}
