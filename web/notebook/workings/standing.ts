import type { Drafts } from "../../../shared/job/draft.ts";
import { EmptyFields } from "../../editing/emptied.ts";
import type { Unusual } from "../../editing/unusual.ts";
import type { AnySection } from "../../sections/parts/section.ts";
import type { Reading } from "../graph/graph.ts";

/** How a section stands, in the words of its summary line; none where there is nothing to say, as for most of them. */
export interface Standing {
  readonly words: string;
  readonly needsAttention: boolean;
}

/** What the summary line says of a section: wrong fields, then a failure, then findings to check. */
export function standingOf(
  section: AnySection,
  reading: Reading<unknown>,
  drafts: Drafts,
  unusual: readonly Unusual[] = [],
): Standing {
  const wrong = Object.keys(drafts).filter((path) => owns(section, path)).length;
  if (wrong > 0) return { words: `${wrong} wrong.`, needsAttention: true };
  if (reading.state === "failed" && reading.error instanceof EmptyFields)
    return { words: "Waiting for an empty field.", needsAttention: true };
  if (reading.state === "failed") return { words: "Cannot be calculated.", needsAttention: true };
  if (reading.state === "waiting") return { words: "calculating …", needsAttention: false };
  const odd = unusual.filter(({ path }) => owns(section, path)).length;
  const toCheck = odd + (section.attention?.(reading.value as never).length ?? 0);
  if (toCheck > 0) return { words: `${toCheck} to check.`, needsAttention: true };
  return { words: "", needsAttention: false };
}

/** Whether a section shows the field of a path. */
function owns(section: AnySection, path: string): boolean {
  return (section.fields ?? []).some((beginning) => path === beginning || path.startsWith(`${beginning}.`));
}
