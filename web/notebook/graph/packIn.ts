import type { Job } from "../../../shared/job/job.ts";

/** The pack at an index of the last runs, in a job that may have fewer by now. */
export function packIn(job: Job, packIndex: number): number {
  return Math.min(packIndex, job.packs.length - 1);
}
