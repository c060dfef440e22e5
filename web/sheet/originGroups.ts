import type { Job } from "../../shared/job/job.ts";
import { knownField } from "../editing/fieldTable/fieldAt.ts";

/** Labels of the values of a job by where they came from. */
export interface OriginGroups {
  readonly measured: readonly string[];
  readonly handbook: readonly string[];
  /** Typed, usual or guessed: nobody vouches for them. */
  readonly open: readonly string[];
}

/** Where the numbers come from, by the words of their fields; several of one kind are named once. */
export function originGroups({ origins }: Pick<Job, "origins">): OriginGroups {
  const of = (isOne: (from: string) => boolean) => {
    const labels = Object.entries(origins)
      .filter(([, { from }]) => isOne(from))
      .map(([path]) => knownField(path)?.label.toLowerCase())
      .filter((label) => label !== undefined);
    return [...new Set(labels)];
  };
  return {
    measured: of((from) => from === "measured"),
    handbook: of((from) => from === "handbook"),
    open: of((from) => from !== "measured" && from !== "handbook"),
  };
}

/** Some labels in a line, the rest counted. */
export function labelLine(labels: readonly string[], most = 8): string {
  const rest = labels.length - most;
  return rest > 0 ? `${labels.slice(0, most).join(", ")} and ${rest} more` : labels.join(", ");
}
