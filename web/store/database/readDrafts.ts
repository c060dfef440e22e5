import type { Draft, Drafts } from "../../../shared/job/draft.ts";
import { presentPath } from "../../../shared/job/formerNames.ts";

/** Drafts as stored, under the paths of today. An earlier edition of this page kept the bare texts, which still wait in their fields. */
export function readDrafts(stored: Readonly<Record<string, Draft | string>>): Drafts {
  return Object.fromEntries(
    Object.entries(stored).map(([path, draft]) => [
      presentPath(path),
      typeof draft === "string" ? { typed: draft, problem: "typed before and not read yet, type it again" } : draft,
    ]),
  );
}
