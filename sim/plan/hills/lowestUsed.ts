import type { Job } from "../../../shared/job/job.ts";
import type { HillRow, HillVerdict } from "./judgeHill.ts";

/** The gear that the car sets off in: the lowest of those used, in the range that the transfer box stands in. */
export function lowestUsed({ driveline: { shifting, transferBox } }: Job, { rows }: HillVerdict): HillRow | undefined {
  const used = shifting.kind === "fixed" ? [shifting.gear] : shifting.gears;
  return rows.find(({ gear, range }) => used.includes(gear) && (range ?? "high") === (transferBox?.range ?? "high"));
}

/** That gear where the car does not start in it. */
export function notStarting(job: Job, verdict: HillVerdict): HillRow | undefined {
  const used = lowestUsed(job, verdict);
  return used && used.spare_frac < 0 ? used : undefined;
}
