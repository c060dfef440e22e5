import type { Job } from "../../shared/job/job.ts";
import { nearest } from "../../shared/nearest.ts";
import { inputError } from "../../shared/problems.ts";
import type { CommandArguments } from "./command.ts";
import { textOption } from "./optionValue.ts";

/** Index of the pack that `--pack` names; without it the one with the most modules, the heaviest. Throws InputError for an unknown name. */
export function packIndexOf(job: Job, args: CommandArguments): number {
  const named = textOption(args, "pack");
  const modules = job.packs.map(({ seriesModules, parallelModules }) => seriesModules * parallelModules);
  if (named === undefined) return modules.indexOf(Math.max(...modules));
  const names = job.packs.map(({ name }) => name);
  const index = names.indexOf(named);
  if (index >= 0) return index;
  const near = nearest(named, names);
  const hint = near === undefined ? `the packs are ${names.join(", ")}` : `did you mean ${near}`;
  throw inputError("pack-unknown", "--pack", `found no pack "${named}"; ${hint}`);
}
