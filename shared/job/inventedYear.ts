import type { Year } from "./schema/year.ts";

/** An invented year with frost in winter, for a job that says nothing of its own. */
export const inventedYear: Year = {
  months_degC: [2, 3, 6, 9, 13, 16, 18, 18, 15, 11, 6, 3],
  scatter_K: 3,
  daysAWeek: 5,
  holidayWeeks: 4,
  spread_frac: 0,
};
