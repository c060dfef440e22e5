import { S_PER_DAY, S_PER_H, S_PER_MIN } from "../../../shared/units.ts";

/** A moment as written: seconds since 1970-01-01 in the written zone turned to UTC, and the zone where it was stated. */
export interface Moment {
  readonly time_s: number;
  /** Local time less UTC, or undefined where the text states no zone. */
  readonly utcOffset_s: number | undefined;
}

const isoPattern =
  /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})[T\s_]+(\d{1,2}):(\d{1,2})(?::(\d{1,2})(?:[.,:](\d*))?)?\s*(Z|UTC|GMT|[+-]\d{1,2}(?::?\d{2})?)?$/i;
// Behind the seconds stands a point, a comma or, of clocks that count hundredths, one more colon.
const clockPattern = /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,:](\d*))?)?\s*(am|pm|Z|UTC)?$/i;
const packedClockPattern = /^(\d{1,2})(\d{2})(\d{2})(?:[.,](\d*))?$/;
const finePackedClockPattern = /^(\d{1,2})(\d{2})(\d{2})(\d{2})$/;
const datePattern = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})\.?$/;
const dateTimePattern = /^(\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4})[,T\s]+(\d{1,2}:\d{2}.*)$/i;

const dayFirstPattern = /^(\d{1,2})[-. ]([a-zä]{3,9})[-. ](\d{4})[,T\s]+(\d{1,2}:\d{2}\S*(?:\s*[ap]m)?)$/i;
const yearLastPattern =
  /^[a-z]{2,9},?\s+([a-zä]{3,9})\s+(\d{1,2})\s+(\d{1,2}:\d{2}\S*)\s+((?:GMT|UTC|Z)?(?:[+-]\d{1,2}:?\d{2})?)\s*(\d{4})$/i;
/** First three letters of the months, in English, and in German and French where they differ. */
const monthNames = [
  "jan",
  "feb fév",
  "mar mär",
  "apr avr",
  "may mai",
  "jun",
  "jul",
  "aug aoû",
  "sep",
  "oct okt",
  "nov",
  "dec dez déc",
].map((names) => names.split(" "));

/** The order of the parts of a date written with numbers only. */
export type DateOrder = "ymd" | "dmy" | "mdy";

/**
 * The moment a text like `2024-05-03T08:12:05.25+02:00` names; parts may lack their zero in front, the T may be a
 * space, the zone may be missing [ISO8601, date and time]. Undefined where the text is no such moment or names none
 * that exists (31 February). A leap second reads as the second after it.
 */
export function readIsoMoment(text: string): Moment | undefined {
  const found = isoPattern.exec(text.trim());
  if (!found) {
    return readNamedMoment(text.trim());
  }
  const [, year, month, day, hour, minute, second, fraction, zone] = found;
  const day_s = dayStart_s(Number(year), Number(month), Number(day));
  const clock_s = clockSeconds(Number(hour), Number(minute), Number(second ?? 0), fraction);
  if (day_s === undefined || clock_s === undefined) {
    return undefined;
  }
  const utcOffset_s = zone === undefined ? undefined : zoneOffset_s(zone);
  return { time_s: day_s + clock_s - (utcOffset_s ?? 0), utcOffset_s };
}

/** `03-May-2024 08:12:05.123` and `Fri May 03 08:12:05 GMT+02:00 2024`, as loggers on telephones write them. */
function readNamedMoment(text: string): Moment | undefined {
  const dayFirst = dayFirstPattern.exec(text);
  const yearLast = dayFirst ? null : yearLastPattern.exec(text);
  const [day, month, year, clock, zone] = dayFirst
    ? [dayFirst[1], dayFirst[2], dayFirst[3], dayFirst[4], undefined]
    : [yearLast?.[2], yearLast?.[1], yearLast?.[5], yearLast?.[3], yearLast?.[4]];
  const monthIndex = monthNames.findIndex((names) => names.includes((month ?? "").slice(0, 3).toLowerCase()));
  const day_s = monthIndex < 0 ? undefined : dayStart_s(Number(year), monthIndex + 1, Number(day));
  const clock_s = readClock_s(clock ?? "");
  if (day_s === undefined || clock_s === undefined) {
    return undefined;
  }
  const utcOffset_s = zone === undefined ? undefined : zoneOffset_s(zone.replace(/^(?:GMT|UTC)(?=.)/i, ""));
  return { time_s: day_s + clock_s - (utcOffset_s ?? 0), utcOffset_s };
}

/** Seconds since midnight of `8:12`, `08:12:05.5` or `8:12:05 pm`; undefined where the text is no time of day. */
export function readClock_s(text: string): number | undefined {
  const found = clockPattern.exec(text.trim());
  if (!found) {
    return undefined;
  }
  const [, hour, minute, second, fraction, half] = found;
  let hours = Number(hour);
  if (half !== undefined && /m$/i.test(half)) {
    if (hours < 1 || hours > 12) {
      return undefined;
    }
    hours = (hours % 12) + (half.toLowerCase() === "pm" ? 12 : 0);
  }
  return clockSeconds(hours, Number(minute), Number(second ?? 0), fraction);
}

/**
 * Seconds since midnight of a clock without signs between its parts: `081205`, `81205.5` or, with hundredths, `08120550`; undefined
 * where the text is none.
 */
export function readPackedClock_s(text: string): number | undefined {
  const found = packedClockPattern.exec(text.trim()) ?? finePackedClockPattern.exec(text.trim());
  return found ? clockSeconds(Number(found[1]), Number(found[2]), Number(found[3]), found[4]) : undefined;
}

/** Start of a day written with numbers, in seconds since 1970-01-01; undefined where there is no such day. */
export function readDate_s(text: string, order: DateOrder): number | undefined {
  const parts = dateParts(text);
  if (!parts) {
    return undefined;
  }
  const [a, b, c] = parts;
  if (order === "ymd" || a > 31) {
    return dayStart_s(fullYear(a), b, c);
  }
  return order === "dmy" ? dayStart_s(fullYear(c), b, a) : dayStart_s(fullYear(c), a, b);
}

/** The three numbers of a date like 03/05/2024, in the order written; undefined where the text is no date. */
export function dateParts(text: string): readonly [number, number, number] | undefined {
  const found = datePattern.exec(text.trim()) ?? /^((?:19|20)\d{2})(\d{2})(\d{2})$/.exec(text.trim());
  return found ? [Number(found[1]), Number(found[2]), Number(found[3])] : undefined;
}

/** Date and clock of a text like `03.05.2024 08:12:05`, each as written; undefined where it is not such a pair. */
export function splitDateTime(text: string): readonly [string, string] | undefined {
  const found = dateTimePattern.exec(text.trim());
  return found?.[1] !== undefined && found[2] !== undefined ? [found[1], found[2]] : undefined;
}

/** Start of a day in seconds since 1970-01-01; undefined where the calendar has no such day between 1970 and 2199. */
export function dayStart_s(year: number, month: number, day: number): number | undefined {
  if (year < 1970 || year > 2199 || month < 1 || month > 12 || day < 1 || day > 31) {
    return undefined;
  }
  const time_ms = Date.UTC(year, month - 1, day);
  return new Date(time_ms).getUTCDate() === day ? time_ms / 1000 : undefined;
}

/** The year two digits stand for: 80 to 99 are the last century's, as receivers and spreadsheets have it. */
function fullYear(year: number): number {
  if (year >= 100) {
    return year;
  }
  return year >= 80 ? 1900 + year : 2000 + year;
}

function clockSeconds(hour: number, minute: number, second: number, fraction: string | undefined): number | undefined {
  const time_s = hour * S_PER_H + minute * S_PER_MIN + second + (fraction ? Number(`0.${fraction}`) : 0);
  return hour <= 24 && minute < 60 && second <= 60 && time_s <= S_PER_DAY + 1 ? time_s : undefined;
}

function zoneOffset_s(zone: string): number {
  const found = /^([+-])(\d{1,2}):?(\d{2})?$/.exec(zone);
  if (!found) {
    return 0;
  }
  const offset_s = Number(found[2]) * S_PER_H + Number(found[3] ?? 0) * S_PER_MIN;
  return found[1] === "-" ? -offset_s : offset_s;
}
