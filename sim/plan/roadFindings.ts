import { quantity as q, type Said, say } from "../../shared/quantity/said.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../shared/units.ts";
import type { Trace } from "../trace/trace.ts";
import type { Finding } from "./driveReport.ts";

/** A recording that begins or ends slower than this, in m/s, is as good as at rest: the stretch added is a few metres. */
const WORTH_SAYING_mps = 5 * MPS_PER_KMH;

/** What a person should know about a road itself, whatever car drives it. */
export function roadFindings({ restAdded }: Trace): Finding[] {
  if (restAdded === undefined) return [];
  const { start_mps, before_m, end_mps, after_m } = restAdded;
  const starts = start_mps >= WORTH_SAYING_mps;
  const ends = end_mps >= WORTH_SAYING_mps;
  if (!starts && !ends) return [];
  const start = say`begins at ${q("speed", start_mps / MPS_PER_KMH)}`;
  const end = say`ends at ${q("speed", end_mps / MPS_PER_KMH)}`;
  const before = say`${q("distance", before_m / M_PER_KM, 2)} from rest before it`;
  const after = say`${q("distance", after_m / M_PER_KM, 2)} to rest after it`;
  const sentence: Said =
    starts && ends
      ? say`This road ${start} and ${end}: ${before} and ${after} added.`
      : starts
        ? say`This road ${start}: ${before} added.`
        : say`This road ${end}: ${after} added.`;
  return [{ kind: "restAdded", weight: "note", sentence }];
}
