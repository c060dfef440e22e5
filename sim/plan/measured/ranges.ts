import type { Job } from "../../../shared/job/job.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { prepare } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import { rangeOn } from "../going/range.ts";

/** How far a car goes on a road by the prediction, and by the line that its log corrected. */
export interface BothRanges {
  readonly predicted_km: number;
  readonly corrected_km: number;
}

/** The range of one pack on a road by either line, in kilometres. */
export function bothRanges(promised: Job, corrected: Job, packIndex: number, road: Trace): BothRanges {
  const range_km = (job: Job) => rangeOn(prepare(job, job.packs[packIndex]), road).distance_m / M_PER_KM;
  return { predicted_km: range_km(promised), corrected_km: range_km(corrected) };
}
