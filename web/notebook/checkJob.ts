import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { InputError, type Problem } from "../../shared/problems.ts";
import { keepShared } from "./keepShared.ts";

export type Checked =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Whether a changed document is still a job, by the reader of job files itself. Unchanged parts of the answer are the
 * very ones of `before`. Recorded roads that are the very ones of `before` were checked when they came in: of them only
 * the first samples are read again, since a week at 10 Hz would hold up every key pressed.
 */
export function checkJob(candidate: Job, before: Job): Checked {
  try {
    const roads = candidate.roads.map((road) => {
      const isKnown = before.roads.includes(road);
      return isKnown && road.kind === "trace" ? { ...road, time_s: [0, 1], speed_kmh: [0, 0] } : road;
    });
    const read = readJob({ ...candidate, roads });
    const whole = {
      ...read,
      roads: read.roads.map((road, i) => (before.roads.includes(candidate.roads[i]) ? candidate.roads[i] : road)),
    };
    return { ok: true, job: keepShared(before, whole) };
  } catch (error) {
    if (error instanceof InputError) return { ok: false, problems: error.problems };
    throw error;
  }
}
