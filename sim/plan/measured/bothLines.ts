import type { Job } from "../../../shared/job/job.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { prepare } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import { rangeOn } from "../going/range.ts";
import { driveWeeks } from "../week/driveWeek.ts";
import { yearOf, yearRanges } from "../year/driveYear.ts";

/** What one pack does by one line: on the job's road, through its year and through its week. */
export interface Outlook {
  readonly range_km: number;
  readonly drivenDays: number;
  /** Days of the year that would not get home, by the pack's age. */
  readonly year: readonly { readonly age_years: number; readonly failingDays: number }[];
  /** By condition; none where the job has no week. */
  readonly week: readonly {
    readonly condition: string;
    readonly lowest_frac: number;
    readonly failingDays: number;
  }[];
}

/** What a car does by the prediction, and by the line that its log corrected. */
export interface BothLines {
  readonly predicted: Outlook;
  readonly corrected: Outlook;
}

/**
 * Range, year and week of one pack by either line. `road` is the job's own, `weekTraces` the roads of its week by id. The same drives as those of
 * the commands `drive`, `year` and `week`.
 */
export function bothLines(
  promised: Job,
  corrected: Job,
  packIndex: number,
  road: Trace,
  weekTraces: ReadonlyMap<string, Trace>,
): BothLines {
  const outlook = (job: Job) => outlookOf({ ...job, packs: [job.packs[packIndex]] }, road, weekTraces);
  return { predicted: outlook(promised), corrected: outlook(corrected) };
}

function outlookOf(job: Job, road: Trace, weekTraces: ReadonlyMap<string, Trace>): Outlook {
  const { days, packs } = yearOf(job, yearRanges(job, road));
  const weeks = job.week === undefined ? undefined : driveWeeks(job, weekTraces);
  return {
    range_km: rangeOn(prepare(job, job.packs[0]), road).distance_m / M_PER_KM,
    drivenDays: days.filter(({ kind }) => kind !== "off").length,
    year: packs.map(({ age_years, failingDays }) => ({ age_years, failingDays: failingDays.length })),
    week: (weeks?.packs ?? []).map(({ condition, lowest, failingDays }) => ({
      condition,
      lowest_frac: lowest.soc_frac,
      failingDays: failingDays.length,
    })),
  };
}
