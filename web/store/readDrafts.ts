import type { Draft, Drafts } from "../../shared/job/draft.ts";

/** Drafts as stored. An earlier edition of this page kept the bare texts, which still wait in their fields. */
export function readDrafts(stored: Readonly<Record<string, Draft | string>>): Drafts {
  return Object.fromEntries(
    Object.entries(stored).map(([path, draft]) => [
      path,
      typeof draft === "string" ? { typed: draft, problem: "typed before and not read yet, type it again" } : draft,
    ]),
  );
}
