import type { Job } from "../../../shared/job/job.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Candidate } from "../driveReport.ts";
import { type Unknown, unknownsByEffect } from "../unknowns.ts";
import { whyNot } from "./packAnswer.ts";
import { stopOf } from "./stops.ts";

/**
 * What the values that nobody measured do to the range of each pack, pack by pack. None for a pack that may not be used or with which
 * the car does not drive the road: its verdict does not hang on them.
 */
export function unknownsOfPacks(
  job: Job,
  candidates: readonly Candidate[],
  trace: Trace,
  isCancelled?: () => boolean,
): Unknown[][] {
  return candidates.map((candidate, packIndex) => {
    const isOut = stopOf(job, packIndex, candidate) !== undefined || whyNot(candidate) !== undefined;
    return isOut ? [] : unknownsByEffect(job, packIndex, trace, isCancelled);
  });
}
