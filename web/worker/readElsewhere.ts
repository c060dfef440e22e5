import type { Job } from "../../shared/job/job.ts";
import { InputError } from "../../shared/problems.ts";
import { type FileLike, readJobFile } from "../store/files/readJobFile.ts";
import type { RoadsApi } from "./roads/roadsApi.ts";

/** A file up to this size is read in the twinkling of an eye, and waiting for a worker to start would take longer. */
const SMALL_B = 1e6;

/** Reads a large job file off the page's thread: 30 MB take seconds to be looked through. Throws as `readJobFile` does. */
export function readElsewhere(roads: Pick<RoadsApi, "job">): (file: FileLike) => Promise<Job> {
  return async (file) => {
    if (!(file instanceof File) || file.size <= SMALL_B) return readJobFile(file);
    const answer = await roads.job(file);
    if (answer.kind === "done") return answer.value;
    throw new InputError(answer.kind === "refused" ? answer.problems : []);
  };
}
