import type { Job } from "../../../../shared/job/job.ts";
import { answerFor } from "../../../../sim/plan/answer/answer.ts";
import { driveJob } from "../../../../sim/plan/drive/driveJob.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { freeze, withPrediction } from "../../../../sim/plan/predictions/freeze.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

export const at = "2026-03-03T09:30:00.000Z";

export function reportsOf(job: Job) {
  const runs = driveJob(job, roadTrace(job.roads[0], cycleTexts));
  const answer = answerFor(
    job,
    runs.candidates,
    runs.candidates.map(() => []),
  );
  return { runs, answer };
}

export const job = demoJob();

export const reports = reportsOf(job);

export const frozen = withPrediction(job, freeze(job, reports, at, " the quote "));

export const [prediction] = frozen.predictions;
