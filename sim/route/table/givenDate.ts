import { inputError } from "../../../shared/problems.ts";
import { type DateOrder, dateParts, dayStart_s, readDate_s, readIsoMoment } from "../log/readTime.ts";

/** Start of a day given as `YYYY-MM-DD`, in seconds since 1970; 0 where none is given. */
export function givenDay_s(date: string | undefined): number {
  return date === undefined ? 0 : (readIsoMoment(`${date} 00:00`)?.time_s ?? 0);
}

/** The order in which the first date of the file is the day given. Throws `InputError` where it is that in neither. */
export function orderOfFirstDate(dates: readonly string[], given: string, name: string): DateOrder {
  const first = dates.find((date) => dateParts(date)) ?? "";
  const day_s = givenDay_s(given);
  const order = (["dmy", "mdy"] as const).find((one) => readDate_s(first, one) === day_s);
  if (order) {
    return order;
  }
  throw inputError("badOption", "--date", `found ${given}, but the first date of ${name} is written ${first}`);
}

/** A day written into the file's name, as loggers do: 2024-05-03, 20240503. */
export function dateInName(name: string): { readonly date: string; readonly time_s: number } | undefined {
  const found = /(?:^|\D)(20\d{2})[-_.]?(\d{2})[-_.]?(\d{2})(?:\D|$)/.exec(name);
  const time_s = found ? dayStart_s(Number(found[1]), Number(found[2]), Number(found[3])) : undefined;
  return found && time_s !== undefined ? { date: `${found[1]}-${found[2]}-${found[3]}`, time_s } : undefined;
}
