import { demos } from "../../shared/demos/index.ts";
import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";

/** The first demo job, read anew, so that no test sees what another one did to it. */
export function demoJob(): Job {
  return readJob(structuredClone(demos[0].document));
}
