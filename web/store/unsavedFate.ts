import type { JobHead, JournalEntry } from "./database/jobRecord.ts";

/** What to do with the journal entry of a page that is gone. */
export type UnsavedFate = "apply" | "copy" | "drop";

/**
 * `apply` where nobody else wrote since (the job stands where the edits were made, or only the same session wrote
 * after); `copy` where somebody did, or the job is gone, so that neither state is lost; `drop` where a save has carried
 * them already, or where they hold only half-typed fields of a job that is gone.
 */
export function fateOfUnsaved(entry: JournalEntry, head: JobHead | undefined): UnsavedFate {
  if (!head) return entry.commit ? "copy" : "drop";
  const isSaved = head.writer === entry.session && head.writerStep >= entry.step;
  if (isSaved) return "drop";
  const isAlone = head.revision === entry.base || head.writer === entry.session;
  return isAlone && head.shelf !== "removed" ? "apply" : "copy";
}

/**
 * The id of the copy that a session's edits up to `step` go into. The same edits give the same id, so that two pages that
 * bring back the same entry, or one that was cut off half-way, make one copy.
 */
export function copyIdOf(jobId: string, session: string, step: number): string {
  return `${jobId}-${session}-${step}`;
}
