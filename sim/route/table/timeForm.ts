import { median } from "simple-statistics";
import { S_PER_DAY } from "../../../shared/units.ts";
import {
  type DateOrder,
  dateParts,
  readClock_s,
  readIsoMoment,
  readPackedClock_s,
  splitDateTime,
} from "../log/readTime.ts";
import { type DecimalSign, readNumber } from "./readNumber.ts";

/** How a table writes time. */
export type TimeForm =
  | { readonly kind: "iso" }
  | { readonly kind: "dateTime"; readonly order: DateOrder; readonly isSure: boolean }
  | { readonly kind: "clock"; readonly isPacked: boolean }
  | { readonly kind: "dayNumber" }
  | { readonly kind: "epoch"; readonly perSecond: number }
  | { readonly kind: "elapsed"; readonly perSecond: number; readonly why: string };

/** Years 1980 to 2100 in seconds since 1970: a count in this span is a date, whatever its factor. */
const EPOCH_FROM_s = 315532800;
const EPOCH_TO_s = 4102444800;

/** The form of a time column from its first cells and its unit; undefined where they are no times. */
export function timeForm(cells: readonly string[], unit: string, decimal: DecimalSign): TimeForm | undefined {
  const filled = cells.filter((cell) => cell.trim() !== "");
  const most = (test: (cell: string) => boolean) =>
    filled.length > 0 && filled.filter(test).length >= 0.8 * filled.length;
  if (most((cell) => readIsoMoment(cell) !== undefined)) {
    return { kind: "iso" };
  }
  if (most((cell) => splitDateTime(cell) !== undefined)) {
    return { kind: "dateTime", ...dateOrder(filled.map((cell) => splitDateTime(cell)?.[0] ?? "")) };
  }
  if (most((cell) => readClock_s(cell) !== undefined)) {
    return { kind: "clock", isPacked: false };
  }
  const numbers = filled.map((cell) => readNumber(cell, decimal)).filter((value) => !Number.isNaN(value));
  if (numbers.length === 0 || numbers.length < 0.8 * filled.length) {
    return undefined;
  }
  for (const perSecond of [1, 1e3, 1e6, 1e9]) {
    if (numbers.every((value) => value / perSecond > EPOCH_FROM_s && value / perSecond < EPOCH_TO_s)) {
      return { kind: "epoch", perSecond };
    }
  }
  if (unit === "" && isDayNumber(numbers)) {
    return { kind: "dayNumber" };
  }
  if (unit === "" && isPackedClock(filled)) {
    return { kind: "clock", isPacked: true };
  }
  return elapsedForm(numbers, unit);
}

/** Day 0 of the spreadsheets' count of days, less 1970-01-01; their day 45415 is 2024-05-03. */
export const SPREADSHEET_DAY0_s = -25569 * S_PER_DAY;

/** Numbers of which every one reads as a clock, thirty seconds apart at most: a count in ms soon has 60 where minutes stand. */
function isPackedClock(cells: readonly string[]): boolean {
  const clocks = cells.map(readPackedClock_s);
  if (cells.length < 3 || clocks.some((clock_s) => clock_s === undefined)) {
    return false;
  }
  const steps = clocks.slice(1).map((clock_s, i) => Number(clock_s) - Number(clocks[i]));
  return steps.filter((step_s) => step_s >= 0 && step_s <= 30).length >= 0.9 * steps.length;
}

/** Days between 1980 and 2100 with the part of the day behind the point, rising by minutes: no clock of seconds rises so slowly. */
function isDayNumber(numbers: readonly number[]): boolean {
  const steps = numbers.slice(1).map((value, i) => value - numbers[i]);
  return (
    numbers.length > 2 &&
    numbers.every((value) => value > 29000 && value < 73000) &&
    numbers.some((value) => !Number.isInteger(value)) &&
    steps.filter((step) => step >= 0 && step < 0.01).length >= 0.9 * steps.length
  );
}

/** The order of day, month and year from the dates themselves; not sure where every date reads both ways. */
export function dateOrder(dates: readonly string[]): { readonly order: DateOrder; readonly isSure: boolean } {
  let dayFirst = false;
  let monthFirst = false;
  for (const date of dates) {
    const parts = dateParts(date);
    if (!parts) {
      continue;
    }
    if (parts[0] > 31) {
      return { order: "ymd", isSure: true };
    }
    dayFirst ||= parts[0] > 12 || date.includes(".");
    monthFirst ||= parts[1] > 12;
  }
  return { order: monthFirst && !dayFirst ? "mdy" : "dmy", isSure: dayFirst !== monthFirst };
}

/** Elapsed time: by the unit where one is named; else in ms where rows lie 50 or more apart, since no drive is logged so thinly. */
function elapsedForm(numbers: readonly number[], unit: string): TimeForm | undefined {
  const steps = numbers.slice(1).map((value, i) => value - numbers[i]);
  const rising = steps.filter((step) => step >= 0).length;
  if (steps.length > 0 && rising < 0.9 * steps.length) {
    return undefined;
  }
  const named: Readonly<Record<string, number>> = { s: 1, ms: 1e3, us: 1e6, min: 1 / 60 };
  const perSecond = named[unit];
  if (perSecond !== undefined) {
    return { kind: "elapsed", perSecond, why: `counted in ${unit} from a start` };
  }
  const forward = steps.filter((step) => step > 0);
  const usual = forward.length > 0 ? median(forward) : 1;
  if (usual >= 50000) {
    return { kind: "elapsed", perSecond: 1e6, why: "rows lie 50,000 or more apart: microseconds" };
  }
  return usual >= 50
    ? { kind: "elapsed", perSecond: 1e3, why: "rows lie 50 or more apart: milliseconds" }
    : { kind: "elapsed", perSecond: 1, why: "rows lie less than 50 apart: seconds" };
}
