import { inventedYear } from "../../../shared/job/inventedYear.ts";
import type { Job } from "../../../shared/job/job.ts";
import type { Year } from "../../../shared/job/schema/year.ts";
import { dayAtShare_km, middleDay_km } from "./drivenDays.ts";

/** One day of a plain year: one that is no leap year and begins on the first day of a working week. */
export interface DayOfYear {
  /** "1 Jan". */
  readonly date: string;
  readonly temperature_degC: number;
  /** None on a day on which the car stands. */
  readonly distance_km: number;
  readonly kind: "usual" | "longest" | "off";
  /** In one of the three coldest months. */
  readonly isWinter: boolean;
}

export const DAYS = 365;
const WEEK_days = 7;
const WEEKS = 52;
const MONTHS = [
  ...(["Jan", "Feb", "Mar", "Apr", "May", "Jun"] as const),
  ...(["Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const),
];
const LENGTHS_days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const COLDEST = 3;

/** What of a job its year hangs on. */
export type YearJob = Pick<Job, "usualDay_km" | "longestDay_km" | "longestDaysAYear" | "year">;

/**
 * The 365 days of a job's year. No chance is in it, so that the same job has the same days: temperatures run straight from the middle of
 * one month to the middle of the next, and single days lie about that as an even sequence has them; so do the lengths of the driven days, about
 * the usual one or, where the year has a list of days, among those. Holidays and the longest days are spread evenly.
 */
export function daysOfYear(job: YearJob): DayOfYear[] {
  const year = job.year ?? inventedYear;
  const coldest = year.months_degC
    .map((mean_degC, month) => ({ mean_degC, month }))
    .sort((a, b) => a.mean_degC - b.mean_degC)
    .slice(0, COLDEST)
    .map(({ month }) => month);
  const driven = Array.from({ length: DAYS }, (_, day) => day).filter((day) => isDriven(year, day));
  const longest = longestDays(job, driven);
  const lengthOf_km = usualLengths(job, year);
  let usualDays = 0;
  return dates().map(({ date, month }, day) => {
    const kind = longest.has(day) ? "longest" : isDriven(year, day) ? "usual" : "off";
    const usual_km = lengthOf_km(day, usualDays);
    if (kind === "usual") usualDays += 1;
    return {
      date,
      temperature_degC: seasonal_degC(year, day) + year.scatter_K * triangular(even(day, SILVER)),
      distance_km: kind === "off" ? 0 : kind === "longest" ? (job.longestDay_km ?? usual_km) : usual_km,
      kind,
      isWinter: coldest.includes(month),
    };
  });
}

/** The length of a usual day by its place in the year, and by its place among usual days where it is drawn from a list: so each of that comes as often. */
function usualLengths(
  { usualDay_km }: YearJob,
  { daysDriven_km, spread_frac }: Year,
): (day: number, place: number) => number {
  if (daysDriven_km === undefined) return (day) => usualDay_km * (1 + spread_frac * (2 * even(day, GOLDEN) - 1));
  const ratio = usualDay_km / middleDay_km(daysDriven_km);
  const sorted_km = daysDriven_km.toSorted((a, b) => a - b);
  return (_, place) => ratio * dayAtShare_km(sorted_km, even(place, GOLDEN));
}

/** Irrational steps, whose multiples fill the span from 0 to 1 evenly at any count (Weyl). */
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const SILVER = Math.SQRT2 - 1;

function even(index: number, step: number): number {
  return (0.5 + index * step) % 1;
}

/** The value of a triangular distribution about nought with a standard deviation of 1 below which a share lies: it ends at √6. */
function triangular(share: number): number {
  const reach = Math.sqrt(6);
  return share < 0.5 ? reach * (Math.sqrt(2 * share) - 1) : reach * (1 - Math.sqrt(2 * (1 - share)));
}

function isDriven({ daysAWeek, holidayWeeks }: Year, day: number): boolean {
  const week = Math.min(WEEKS - 1, Math.floor(day / WEEK_days));
  const isHoliday = Math.floor(((week + 1) * holidayWeeks) / WEEKS) > Math.floor((week * holidayWeeks) / WEEKS);
  return !isHoliday && day % WEEK_days < daysAWeek;
}

function longestDays(
  { usualDay_km, longestDay_km, longestDaysAYear = 1 }: YearJob,
  driven: readonly number[],
): Set<number> {
  if (longestDay_km === undefined || longestDay_km <= usualDay_km) return new Set();
  const count = Math.min(longestDaysAYear, driven.length);
  return new Set(Array.from({ length: count }, (_, k) => driven[Math.floor(((k + 0.5) * driven.length) / count)]));
}

function dates(): { readonly date: string; readonly month: number }[] {
  return LENGTHS_days.flatMap((length, month) =>
    Array.from({ length }, (_, day) => ({ date: `${day + 1} ${MONTHS[month]}`, month })),
  );
}

/** Mean temperature of a day, on a straight line between the middles of its month and of the next one. */
function seasonal_degC({ months_degC }: Year, day: number): number {
  const at = (day + 0.5) / (DAYS / months_degC.length) - 0.5;
  const from = Math.floor(at);
  const wrapped = (month: number) => (month + months_degC.length) % months_degC.length;
  const share = at - from;
  return (1 - share) * months_degC[wrapped(from)] + share * months_degC[wrapped(from + 1)];
}
