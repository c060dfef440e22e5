import type { Job } from "../../../shared/job/job.ts";
import type { Trace } from "../../trace/trace.ts";
import { yearOf, yearRanges } from "../year/driveYear.ts";

/** The days of a year on which a pack would not get home, new and at ten years, of so many driven ones. */
export interface DaysFailed {
  readonly new: number;
  readonly tenYears: number;
  readonly driven: number;
}

/** The days that each pack of a job fails in its year, in their order; two dozen drives each. */
export function daysFailed(job: Job, trace: Trace): DaysFailed[] {
  if (job.packs.length === 0) return [];
  const { packs, days } = yearOf(job, yearRanges(job, trace));
  const driven = days.filter(({ kind }) => kind !== "off").length;
  const ages = packs.length / job.packs.length;
  return job.packs.map((_, i) => {
    const own = packs.slice(i * ages, (i + 1) * ages);
    const failed = (isNew: boolean) =>
      own.find(({ age_years }) => (age_years === 0) === isNew)?.failingDays.length ?? 0;
    return { new: failed(true), tenYears: failed(false), driven };
  });
}
