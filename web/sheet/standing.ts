import type { Job } from "../../shared/job/job.ts";
import { messageIn } from "../../shared/quantity/message.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { type Answer, compare, type DriveReport, frozenOn, rangeWords } from "../../sim/index.ts";

/**
 * Which figures the client sheet shows: those of a frozen prediction, since nothing that it depends on has changed, or today's, with what
 * was predicted beside them.
 */
export function standingOf(
  job: Job,
  runs: Pick<DriveReport, "candidates" | "trace">,
  answer: Answer,
  units: UnitHabit,
): string {
  const last = job.predictions.at(-1);
  if (!last) return "Figures of today, not frozen as a prediction.";
  const on = frozenOn(last.at);
  const { isUnchanged, program, packs } = compare(last, job, { runs, answer });
  if (isUnchanged && program === "same") return `Figures as predicted on ${on} (version ${last.program}).`;
  const then = (packs.find(({ name }) => name === last.recommended) ?? packs[0])?.then;
  const range = then && rangeWords(then);
  const was = range ? `: ${then.name.slice(0, 14)} a range of ${messageIn(range, units)}` : "";
  const by = program === "newer" ? `, by version ${last.program}, which is newer than this program` : "";
  return `Figures of today; as predicted on ${on}${by}${was}.`;
}
