import type { Job } from "../../shared/job/job.ts";

/** One line that tells a job from others in a list: the car, the days it is for, the packs and roads compared. */
export function jobLine(job: Job): string {
  const days =
    job.longestDay_km === undefined
      ? `${job.usualDay_km} km a day`
      : `${job.usualDay_km} km a day, ${job.longestDay_km} km at most`;
  const parts = [job.vehicle.name, days, counted(job.packs.length, "pack"), counted(job.roads.length, "road")];
  return job.isInvented ? `${parts.join(" · ")} · invented` : parts.join(" · ");
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
