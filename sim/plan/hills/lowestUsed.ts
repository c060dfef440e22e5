import type { Job } from "../../../shared/job/job.ts";
import type { HillRow, HillVerdict } from "./judgeHill.ts";

/** The gear that the car sets off in: the lowest of those used, in the range that the transfer box stands in. */
export function lowestUsed({ driveline: { shifting, transferBox } }: Job, { rows }: HillVerdict): HillRow | undefined {
  const used = shifting.kind === "fixed" ? [shifting.gear] : shifting.gears;
  return rows.find(({ gear, range }) => used.includes(gear) && (range ?? "high") === (transferBox?.range ?? "high"));
}
