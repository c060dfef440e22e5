import type { Job } from "../../shared/job/job.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";

/** One line that tells a job from others in a list: the car, the days it is for in the job's own units, the packs and roads compared. */
export function jobLine(job: Job): string {
  const far = (distance_km: number) => writeQuantity("distance", distance_km, job.units);
  const days =
    job.longestDay_km === undefined
      ? `${far(job.usualDay_km)} a day`
      : `${far(job.usualDay_km)} a day, ${far(job.longestDay_km)} at most`;
  const parts = [job.vehicle.name, days, counted(job.packs.length, "pack"), counted(job.roads.length, "road")];
  return job.isInvented ? `${parts.join(" · ")} · invented` : parts.join(" · ");
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
