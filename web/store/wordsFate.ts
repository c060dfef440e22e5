import type { JobHead, LastWords } from "./jobRecord.ts";

/** What to do with the unsaved words of a page that is gone. */
export type WordsFate = "apply" | "copy" | "drop";

/**
 * `apply` where nobody else wrote since (the job stands where the words were typed, or only the same session wrote
 * after); `copy` where somebody did, or the job is gone, so that neither state is lost; `drop` where a save has carried
 * them already, or where they hold only half-typed fields of a job that is gone.
 */
export function fateOfWords(words: LastWords, head: JobHead | undefined): WordsFate {
  if (!head) return words.commit ? "copy" : "drop";
  const isSaved = head.writer === words.session && head.writerStep >= words.step;
  if (isSaved) return "drop";
  const isAlone = head.revision === words.base || head.writer === words.session;
  return isAlone && head.shelf !== "removed" ? "apply" : "copy";
}

/**
 * The id of the copy that a session's edits up to `step` go into. The same edits give the same id, so that two pages that
 * bring back the same words, or one that was cut off half-way, make one copy.
 */
export function copyIdOf(jobId: string, session: string, step: number): string {
  return `${jobId}-${session}-${step}`;
}
