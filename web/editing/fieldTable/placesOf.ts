import type { Job } from "../../../shared/job/job.ts";
import { atPath } from "../../../shared/job/path.ts";

/** The paths of a job that a pattern of the field table stands for: one for each entry of the list at its `*`. */
export function placesOf(job: Job, pattern: string): string[] {
  const star = pattern.indexOf("*");
  if (star < 0) return [pattern];
  const list = atPath(job, pattern.slice(0, star - 1));
  return Array.isArray(list) ? list.map((_, i) => `${pattern.slice(0, star)}${i}${pattern.slice(star + 1)}`) : [];
}
