import { inputError } from "../../../shared/problems.ts";
import type { CommandArguments } from "../command.ts";

/** The job file that a command is given. Throws InputError where there is none or more than one. */
export function onlyJobPath({ positionals }: CommandArguments, command: string): string {
  const [path, extra] = positionals;
  if (path === undefined)
    throw inputError("argument-missing", command, "found no job file, one is wanted; bellhousing new FILE writes one");
  if (extra !== undefined)
    throw inputError("argument-extra", extra, `found a second argument, ${command} takes one job file`);
  return path;
}
