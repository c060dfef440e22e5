import type { Job } from "../../../shared/job/job.ts";
import type { Trace } from "../../trace/trace.ts";
import type { ConditionDrive, ConditionDrives } from "../conditions/driveConditions.ts";
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
      const scaled = ({ atLow_km, atHigh_km }: Pick<Unknown, "atLow_km" | "atHigh_km">) => ({
        atLow_km: factor * atLow_km,
        atHigh_km: factor * atHigh_km,
      });
      return {
        ...unknown,
        ...scaled(unknown),
        ...(unknown.tenYearsWinter && { tenYearsWinter: scaled(unknown.tenYearsWinter) }),
      };
    }),
  );
}

/** Drives in conditions of before a change as they would be after it, were each range the same share of today's: what stands in for them. */
export function scaledConditions(
  before: readonly ConditionDrives[],
  drivenBefore: readonly Pick<Candidate, "range_km">[],
  now: readonly Candidate[],
): readonly Candidate[] {
  return now.map((candidate, i) => {
    const conditions = before[i];
    const range_km = drivenBefore[i]?.range_km;
    if (!conditions || !range_km) return candidate;
    const factor = candidate.range_km / range_km;
    const scaled = (drive: ConditionDrive) => ({ ...drive, range_km: factor * drive.range_km });
    const { winter, tenYearsWinter, others } = conditions;
    return {
      ...candidate,
      conditions: {
        ...(winter && { winter: scaled(winter) }),
        ...(tenYearsWinter && { tenYearsWinter: scaled(tenYearsWinter) }),
        others: others.map(scaled),
      },
    };
  });
}
