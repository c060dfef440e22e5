import type { Job } from "../../../shared/job/job.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { steepestPitch } from "../../trace/steepestPitch.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Hill } from "./climb.ts";

/** Length of a hill of which only the gradient is known. Assumed. */
export const USUAL_LENGTH_m = 1000;

/** The hill that a car is judged on, and where it comes from. */
export interface AskedHill extends Hill {
  readonly from: "typed" | "road";
}

/**
 * The hill as typed (`grade_ratio`, `length_m`), else as the job asks for it, else the steepest 60 m of the road; nothing where none of
 * them is there and the road is level.
 */
export function hillAsked(
  requirement: Job["requirement"],
  trace: Trace,
  typed: Partial<Hill> = {},
): AskedHill | undefined {
  const grade_ratio = typed.grade_ratio ?? requirement?.startHill_ratio;
  const asked_km = requirement?.hillLength_km;
  const length_m = typed.length_m ?? (asked_km === undefined ? undefined : asked_km * M_PER_KM);
  if (grade_ratio !== undefined) return { grade_ratio, length_m: length_m ?? USUAL_LENGTH_m, from: "typed" };
  const pitch = trace.profile && steepestPitch(trace.profile);
  if (!pitch) return undefined;
  return { grade_ratio: pitch.grade_ratio, length_m: length_m ?? pitch.to_m - pitch.from_m, from: "road" };
}
