import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import type { Road } from "../../shared/job/schema/road.ts";
import { InputError, type Problem } from "../../shared/problems.ts";
import { keepShared } from "./keepShared.ts";

export type Checked =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Whether a changed document is still a job, by the reader of job files itself. Unchanged parts of the answer are the
 * very ones of `before`. Recorded roads that are the very ones of `before` were checked when they came in: of them only
 * the first samples are read again, since a week at 10 Hz would hold up every key pressed; so are roads of `checked`, which
 * whoever made them has held to the same reader, off the page's thread.
 */
export function checkJob(candidate: Job, before: Job, checked: readonly Road[] = []): Checked {
  const isKnown = (road: Road) => before.roads.includes(road) || checked.includes(road);
  try {
    const roads = candidate.roads.map((road) => (isKnown(road) && road.kind === "trace" ? withoutSamples(road) : road));
    const read = readJob({ ...candidate, roads });
    const whole = {
      ...read,
      roads: read.roads.map((road, i) => (isKnown(candidate.roads[i]) ? candidate.roads[i] : road)),
    };
    return { ok: true, job: keepShared(before, whole) };
  } catch (error) {
    if (error instanceof InputError) return { ok: false, problems: error.problems };
    throw error;
  }
}

/** All that the rest of the job may be at odds with: its id and its title. */
function withoutSamples({ hills: _hills, ...road }: Extract<Road, { kind: "trace" }>): Road {
  return { ...road, time_s: [0, 1], speed_kmh: [0, 0] };
}
