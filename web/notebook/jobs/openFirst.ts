import type { Job } from "../../../shared/job/job.ts";
import { readJob } from "../../../shared/job/readJob.ts";
import type { Jobs } from "../../store/jobsDoor.ts";
import { fetchPart } from "../../worker/fetchPart.ts";
import { lastOpen } from "./lastOpen.ts";

/** Opens the job that this tab had open, or else the one changed last; on the first visit, or where none can be read, the first demo. */
export async function openFirst(jobs: Jobs): Promise<void> {
  const before = lastOpen();
  const heads = jobs.list.peek().filter(({ shelf }) => shelf === "open");
  for (const { id } of [...heads.filter((head) => head.id === before), ...heads]) {
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
