import type { Job } from "../../../shared/job/job.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import type { Jobs } from "../../store/jobsDoor.ts";
import { fetchPart } from "../../worker/fetchPart.ts";

/** Opens the job that was changed last; on the first visit, or where none of them can be read, the first demo. */
export async function openFirst(jobs: Jobs): Promise<void> {
  for (const { id, shelf } of jobs.list.peek()) {
    if (shelf !== "open") continue;
    try {
      await jobs.open(id);
      return;
    } catch {
      // What cannot be read stays where it is, and the list says how many such there are; the next one is tried.
    }
  }
  await jobs.create(await firstJob(), "the demo");
}

/** The first demo as a job. */
export async function firstJob(): Promise<Job> {
  const { firstDemo } = await fetchPart(() => import("../../../shared/demos/firstDemo.ts"));
  return readJob(firstDemo.document);
}
