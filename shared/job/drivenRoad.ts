import type { Job } from "./job.ts";

/** The road that the packs are judged on. */
export function drivenRoad(job: Pick<Job, "roads" | "drivenRoad">): Job["roads"][number] {
  const road = job.roads.find(({ id }) => id === job.drivenRoad) ?? job.roads[0];
  if (!road) throw new Error("a job without a road got past its reader");
  return road;
}
