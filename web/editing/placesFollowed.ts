import type { Job } from "../../shared/job/job.ts";

/**
 * The job with its week's places called as they are now, where they were called otherwise before: a place keeps its place in the list. Where
 * the place is gone, the car is not charged there any more.
 */
export function withPlacesFollowed(changed: Job, { supplies: before }: Pick<Job, "supplies">): Job {
  const { week, supplies } = changed;
  if (week === undefined || before === supplies) return changed;
  const names = new Set(supplies.map(({ name }) => name));
  const days = week.days.map((day) => ({
    ...day,
    trips: day.trips.map((trip) => {
      const { parkedAt, plugged, ...rest } = trip;
      if (parkedAt === undefined || names.has(parkedAt)) return trip;
      const now = supplies[before.findIndex(({ name }) => name === parkedAt)]?.name;
      return now === undefined ? rest : { ...rest, parkedAt: now, ...(plugged && { plugged }) };
    }),
  }));
  return { ...changed, week: { ...week, days } };
}
