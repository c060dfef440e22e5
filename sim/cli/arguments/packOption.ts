import type { Job } from "../../../shared/job/job.ts";
import { nearest } from "../../../shared/nearest.ts";
import { inputError } from "../../../shared/problems.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import type { CommandArguments } from "../command.ts";
import { textOption } from "./optionValue.ts";

/** Index of the pack that `--pack` names; without it the heaviest. Throws InputError for an unknown name. */
export function packIndexOf(job: Job, args: CommandArguments): number {
  const named = textOption(args, "pack");
  const masses_kg = job.packs.map((pack) => packMass_kg(pack, job.module));
  if (named === undefined) return masses_kg.indexOf(Math.max(...masses_kg));
  const names = job.packs.map(({ name }) => name);
  const index = names.indexOf(named);
  if (index >= 0) return index;
  const near = nearest(named, names);
  const hint = near === undefined ? `the packs are ${names.join(", ")}` : `did you mean ${near}`;
  throw inputError("pack-unknown", "--pack", `found no pack "${named}"; ${hint}`);
}
