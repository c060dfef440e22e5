import type { Job } from "../../../shared/job/job.ts";
import { resultOf } from "../../math/resultOf.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Candidate } from "../driveReport.ts";
import { sampleRange } from "../vary/sampleRange.ts";
import { type Answer, answerFor } from "./answer.ts";
import { packsToSample } from "./packsToSample.ts";
import type { SampledRange } from "./sampledRange.ts";
import { packsInQuestion, unknownsOfPacks } from "./unknownsOfPacks.ts";

/** Variants that are driven of a pack whose verdict hangs on its band, and the seed that draws them. */
export const SAMPLED = { variants: 256, seed: 1 } as const;

/** The range in which each of these packs' verdict falls, over many variants of what is not known; nothing for the others. */
export function* sampleRanges(
  job: Job,
  packIndexes: readonly number[],
  trace: Trace,
): Generator<number, (SampledRange | undefined)[], void> {
  const found: (SampledRange | undefined)[] = job.packs.map(() => undefined);
  for (const [k, index] of packIndexes.entries()) {
    const steps = sampleRange(job, index, trace, "tenYearsWinter", SAMPLED);
    for (;;) {
      const { done, value } = steps.next();
      if (done) {
        found[index] = value;
        break;
      }
      yield (k + value) / packIndexes.length;
    }
  }
  return found;
}

/** The answer with all that has to be driven for it: single effects of what is not known, and many variants where the verdict hangs on them. */
export function answerByDriving(job: Job, candidates: readonly Candidate[], trace: Trace): Answer {
  const unknowns = unknownsOfPacks(job, packsInQuestion(job, candidates), trace);
  const inDoubt = packsToSample(answerFor(job, candidates, unknowns));
  return answerFor(job, candidates, unknowns, resultOf(sampleRanges(job, inDoubt, trace)));
}
