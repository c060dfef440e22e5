import { type DecidingState, decidingKeys, type Job } from "./job.ts";

/** What of a job decides its answer, its objects shared with it. */
export function decidingState(job: Pick<Job, keyof DecidingState>): DecidingState {
  const entries = decidingKeys.flatMap((key) => (job[key] === undefined ? [] : [[key, job[key]] as const]));
  return Object.fromEntries(entries) as unknown as DecidingState;
}
