import { inventedYear } from "../../shared/job/inventedYear.ts";
import type { Origin } from "../../shared/job/job.ts";
import { DAYS_MOST } from "../../shared/job/schema/year.ts";
import { M_PER_KM } from "../../shared/units.ts";
import { drivenDaysAWeek, middleDay_km } from "../../sim/index.ts";
import { withGroup } from "../editing/groupEdits.ts";
import type { EditorState } from "../editing/jobEditor.ts";
import type { Drive } from "../worker/roads/roadsApi.ts";

/** Days of a log that were driven, to 0.1 km, the last of them where they are more than a year may list; none of less than that. */
export function drivenDays_km({ days }: Pick<Drive, "days">): number[] {
  return days
    .flatMap(({ trips, distance_m }) => (trips > 0 && tenths_km(distance_m) > 0 ? [tenths_km(distance_m)] : []))
    .slice(-DAYS_MOST);
}

/** How many days a week a log was driven by its own calendar; nothing where that spans no week. */
export function logDaysAWeek({ days }: Pick<Drive, "days">): number | undefined {
  return drivenDaysAWeek(days.flatMap(({ date, trips }) => (trips > 0 ? [date] : [])));
}

/**
 * The state with the days of a log as those that the year's driven days are drawn from, with as many of them a week, and with their middle one as
 * the usual day, so that they count as they were driven. Neither dates nor places go into the job file.
 */
export function withLogDays(state: EditorState, drive: Pick<Drive, "days">): EditorState {
  const days_km = drivenDays_km(drive);
  if (days_km.length === 0) return state;
  const measured: Origin = { from: "measured", note: "the days of a log" };
  const daysAWeek = logDaysAWeek(drive);
  const week = daysAWeek !== undefined && { daysAWeek };
  const { usualDay_km: _usual, ...waiting } = state.drafts;
  const { "year.daysAWeek": _week, ...others } = waiting;
  const drafts = week ? others : waiting;
  const job = {
    ...state.job,
    year: { ...(state.job.year ?? inventedYear), ...week },
    usualDay_km: middleDay_km(days_km),
    origins: { ...state.job.origins, usualDay_km: measured, ...(week && { "year.daysAWeek": measured }) },
  };
  return withGroup({ job, drafts }, "year.daysDriven_km", days_km, { "": measured });
}

function tenths_km(distance_m: number): number {
  return Math.round((10 * distance_m) / M_PER_KM) / 10;
}
