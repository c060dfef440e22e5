import type { Job } from "../../../shared/job/job.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Candidate } from "../driveReport.ts";
import { type Unknown, unknownsByEffect } from "../unknowns.ts";
import { whyNot } from "./packAnswer.ts";
import { type Limits, stopOf } from "./stops.ts";

/**
 * The packs whose verdict hangs on what is not known: not one that may not be used, nor one with which the car does not drive the road.
 */
export function packsInQuestion(limits: Limits, candidates: readonly Candidate[]): number[] {
  const isIn = (i: number) => stopOf(limits, i, candidates[i]) === undefined && whyNot(candidates[i]) === undefined;
  return candidates.map((_, i) => i).filter(isIn);
}

/** What the values that nobody measured do to the range of each pack in question, in the order of the job; nothing for the others. */
export function unknownsOfPacks(
  job: Job,
  packIndexes: readonly number[],
  trace: Trace,
  isCancelled?: () => boolean,
): Unknown[][] {
  return job.packs.map((_, i) => (packIndexes.includes(i) ? unknownsByEffect(job, i, trace, isCancelled) : []));
}

/**
 * Unknowns of before a change as they would be after it, were each effect the same share of the range: what stands in for them until
 * they have been driven. Nothing where the packs are no longer the same in number.
 */
export function scaledUnknowns(
  unknowns: readonly (readonly Unknown[])[],
  candidates: readonly Candidate[],
): Unknown[][] | undefined {
  if (unknowns.length !== candidates.length) return undefined;
  return unknowns.map((ofPack, i) =>
    ofPack.map((unknown) => {
      const factor = unknown.asTaken_km > 0 ? candidates[i].range_km / unknown.asTaken_km : 1;
      return { ...unknown, atLow_km: factor * unknown.atLow_km, atHigh_km: factor * unknown.atHigh_km };
    }),
  );
}
