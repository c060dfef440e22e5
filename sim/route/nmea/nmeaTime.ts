import { S_PER_DAY } from "../../../shared/units.ts";
import { dayStart_s } from "../log/readTime.ts";

/** Seconds since midnight of hhmmss.sss; read here because the parser fills a missing date with the computer's own. */
export function nmeaClock_s(field: string | undefined): number | undefined {
  const found = /^(\d{2})(\d{2})(\d{2}(?:\.\d*)?)$/.exec(field ?? "");
  if (!found) {
    return undefined;
  }
  const clock_s = Number(found[1]) * 3600 + Number(found[2]) * 60 + Number(found[3]);
  return clock_s <= S_PER_DAY ? clock_s : undefined;
}

/** Start of the day ddmmyy, in seconds since 1970; 80 to 99 are the last century's. */
export function nmeaDay_s(field: string | undefined): number | undefined {
  const found = /^(\d{2})(\d{2})(\d{2})$/.exec(field ?? "");
  if (!found) {
    return undefined;
  }
  const year = Number(found[3]);
  return dayStart_s(year >= 80 ? 1900 + year : 2000 + year, Number(found[2]), Number(found[1]));
}
