import type { Job } from "../../../shared/job/job.ts";
import { answerFor } from "../../../sim/index.ts";
import { type SheetInput, sheetContent } from "../../../web/sheet/sheetContent.ts";
import { demoJob } from "../../support/demoJob.ts";
import { inventedCandidate } from "../../support/inventedCandidate.ts";

/** What a client sheet is made from: the demo with other values, its packs as if they went 80 km, 120 km and so on. */
export function sheetInput(changes: Partial<Job> = {}, others: Partial<SheetInput> = {}): SheetInput {
  const job = { ...demoJob(), ...changes };
  const candidates = job.packs.map(({ name }, i) => inventedCandidate(8 + 4 * i, { name }));
  const answer = answerFor(
    job,
    candidates,
    candidates.map(() => []),
  );
  const [{ id, title }] = job.roads;
  const trace = {
    id,
    title,
    duration_s: 600,
    distance_km: 10,
    mean_kmh: 60,
    max_kmh: 80,
    climb_m: 50,
    descent_m: 50,
  };
  const runs = { candidates, trace };
  return { job, runs, answer, units: "metric", date: new Date("2026-11-29T12:00:00Z"), ...others };
}

/** The words of that sheet. */
export function sheetOf(changes: Partial<Job> = {}, others: Partial<SheetInput> = {}) {
  return sheetContent(sheetInput(changes, others));
}
