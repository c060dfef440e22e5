import type { Job } from "../../../shared/job/job.ts";

/** Ids of the roads that a job's week is driven over. */
export function roadsOfWeek({ week }: Pick<Job, "week">): string[] {
  return [...new Set(week?.days.flatMap(({ trips }) => trips.map(({ road }) => road)))];
}
