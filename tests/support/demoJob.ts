import { demos } from "../../shared/demos/index.ts";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";

/** A demo job, the first where not asked otherwise, read anew, so that no test sees what another one did to it. */
export function demoJob(which = 0): Job {
  return readJob(structuredClone(demos[which].document));
}
