import type { Job } from "../../../shared/job/job.ts";
import { answerFor } from "../../plan/answer/answer.ts";
import { driveCandidate } from "../../plan/drive/driveCandidate.ts";
import type { Trace } from "../../trace/trace.ts";
import type { CommandArguments } from "../command.ts";
import { textOption } from "./optionValue.ts";
import { packIndexOf } from "./packOption.ts";

/**
 * Index of the pack that `--pack` names; without it the one that is recommended on this road, as on the page, or the first where none may
 * be used. Throws InputError for an unknown name.
 */
export function chosenPack(job: Job, args: CommandArguments, trace: Trace): number {
  if (textOption(args, "pack") !== undefined) return packIndexOf(job, args);
  const candidates = job.packs.map((pack) => driveCandidate(job, pack, trace, false));
  return answerFor(job, candidates, undefined).recommended ?? 0;
}
