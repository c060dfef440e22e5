import type { Year } from "./schema/year.ts";

/** An invented year with frost in winter, for a job that says nothing of its own. */
export const inventedYear: Year = {
  months_degC: [2, 3, 6, 9, 13, 16, 18, 18, 15, 11, 6, 3],
  scatter_K: 3,
  daysAWeek: 5,
  holidayWeeks: 4,
  spread_frac: 0,
};

/** Whether a job's temperatures are those of the invented year, for want of its own. */
export function hasInventedMonths(year: Year = inventedYear): boolean {
  return year.months_degC.every((mean_degC, month) => mean_degC === inventedYear.months_degC[month]);
}
