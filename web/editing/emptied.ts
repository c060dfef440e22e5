import type { Drafts } from "../../shared/job/draft.ts";
import { labelOf } from "./fieldTable/fieldAt.ts";

/** Fields emptied by hand, by path: nothing stands in for them, so that what hangs on them waits. */
export function emptiedFields(drafts: Drafts, typingAt?: string): string[] {
  return Object.entries(drafts)
    .filter(([path, { typed, problem }]) => typed.trim() === "" && problem !== undefined && path !== typingAt)
    .map(([path]) => path);
}

/** A result that waits for fields that are empty. */
export class EmptyFields extends Error {
  constructor(paths: readonly string[]) {
    super(`Waiting for ${paths.map((path) => `“${labelOf(path)}”`).join(" and ")}: empty`);
    this.name = "EmptyFields";
  }
}
