import * as z from "zod";
import { keysOf } from "../path.ts";

/** Says a fault at a path below the group that is checked. */
export type Fault = (path: readonly (string | number)[], message: string) => void;

/**
 * A check between several values of one group. The library leaves such checks out as soon as anything at all in the group is wrong,
 * and a person would mend a file in rounds; this one is left out only where a value that it reads is itself at fault.
 *
 * `reads` names those values by path below the group, `*` for every entry of a list: `packs.*.name`. A fault at such a path or
 * above it stops the check, and so does one of the group itself; one below it does not, so a list that is read as `packs` may hold
 * wrong entries.
 */
export function across<Group>(reads: readonly string[], check: (group: Group, fault: Fault) => void) {
  const paths = reads.map(keysOf);
  return z.superRefine<Group>(
    (group, ctx) =>
      check(group, (path, message) => ctx.addIssue({ code: "custom", path: [...path], message, input: group })),
    {
      when: ({ value, issues }) =>
        typeof value === "object" &&
        value !== null &&
        !issues.some(
          ({ code, path = [] }) =>
            code !== "unrecognized_keys" && (path.length === 0 || paths.some((read) => isAtOrAbove(path, read))),
        ),
    },
  );
}

function isAtOrAbove(path: readonly PropertyKey[], read: readonly string[]): boolean {
  return path.length <= read.length && path.every((key, i) => read[i] === "*" || read[i] === String(key));
}
