import type { Trace } from "../../trace/trace.ts";
import type { CleanedLog } from "../clean/report/cleanedLog.ts";
import { toTrace } from "../roads/toTrace.ts";

/** Shorter pieces between breaks have nothing to be compared with. */
const SHORTEST_s = 30;

/** A cleaned log as parts without a break, standing between drives included, each with the moment it begins on the log's clock. */
export interface DriveParts {
  readonly parts: readonly { readonly start_s: number; readonly trace: Trace }[];
  readonly hasHeights: boolean;
}

/**
 * The parts of a cleaned log: all that it recorded from break to break. Heights are the middle of all that fit: nearer to the road than those of
 * one drive taken out of many, which would be compared with a pack that felt neither.
 */
export function drivePartsOf({ series }: Pick<CleanedLog, "series">): DriveParts {
  const ends = [...series.breaks, series.count];
  const begins = [0, ...series.breaks];
  const pieces = begins.map((from, i) => ({ from, to: ends[i] })).filter(({ from, to }) => to - from > SHORTEST_s);
  const parts = pieces.map(({ from, to }) => ({
    start_s: series.time_s[from],
    trace: toTrace(
      { speed_mps: series.speed_mps.slice(from, to), elevation_m: series.middleElevation_m.slice(from, to) },
      "log",
      "log",
    ),
  }));
  return {
    parts,
    hasHeights: parts.some(({ trace }) => trace.profile !== undefined),
  };
}
