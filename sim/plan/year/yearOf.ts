import { straightAt } from "../../math/straightAt.ts";
import { type DayOfYear, daysOfYear, type YearJob } from "./days.ts";
import type { FailingDay, PackYear, YearRanges, YearReport } from "./yearReport.ts";

/**
 * Every evening of a year: what is left of a day is what one charge goes at its temperature, less what is driven. Every day begins charged
 * to the ceiling.
 */
export function yearOf(job: YearJob, { packs, ...driven }: YearRanges): YearReport {
  const days = daysOfYear(job);
  return {
    ...driven,
    days,
    packs: packs.map(({ name, age_years, ranges_km }) =>
      packYear(name, age_years, days, (at_degC) => straightAt(driven.driven_degC, ranges_km, at_degC)),
    ),
  };
}

/** A pack's evenings from its range by temperature. */
function packYear(
  name: string,
  age_years: number,
  days: readonly DayOfYear[],
  range_km: (at_degC: number) => number,
): PackYear {
  const evenings_km = days.map(({ temperature_degC, distance_km }) => range_km(temperature_degC) - distance_km);
  const failingDays = days.flatMap(({ date, distance_km, temperature_degC, kind }, day): FailingDay[] =>
    evenings_km[day] < 0 ? [{ date, distance_km, temperature_degC, kind, short_km: -evenings_km[day] }] : [],
  );
  return { name, age_years, evenings_km, failingDays };
}
