import type { Drafts } from "../editing/jobEditor.ts";
import type { AnySection } from "../sections/parts/section.ts";
import type { Reading } from "./graph/graph.ts";

/** How a section stands, in the words of the contents list; none where there is nothing to say, as for most of them. */
export interface Standing {
  readonly words: string;
  readonly needsAttention: boolean;
}

/** What the contents list says of a section: fields to mend, then a failure, then findings to look at. */
export function standingOf(section: AnySection, reading: Reading<unknown>, drafts: Drafts): Standing {
  const toMend = Object.keys(drafts).filter((path) => owns(section, path)).length;
  if (toMend > 0) return { words: `${toMend} to mend`, needsAttention: true };
  if (reading.state === "failed") return { words: "cannot be worked", needsAttention: true };
  if (reading.state === "waiting") return { words: "being worked", needsAttention: false };
  const toHeed = section.attention?.(reading.value as never).length ?? 0;
  if (toHeed > 0) return { words: `${toHeed} to look at`, needsAttention: true };
  return { words: "", needsAttention: false };
}

/** Whether a section shows the field of a path. */
function owns(section: AnySection, path: string): boolean {
  return (section.fields ?? []).some((beginning) => path === beginning || path.startsWith(`${beginning}.`));
}
