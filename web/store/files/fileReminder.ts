import type { JobHead } from "../database/jobRecord.ts";

/** A job's last copy on disk is called old after this long, where edits were made since. */
export const OLD_COPY_days = 14;

/** ... or after this many edits. */
export const OLD_COPY_EDITS = 30;

const DAY_ms = 86_400_000;

/** Why a job should be saved as a file now. */
export type Reminder =
  | { readonly kind: "never"; readonly edits: number }
  | { readonly kind: "old"; readonly edits: number; readonly days: number; readonly name: string };

/**
 * Nothing while the last file copy is good enough: no edits since, or few and recent. A job that has no copy is
 * reminded of after the same number of edits, or the same time since it was made.
 */
export function fileReminder(head: JobHead, now_ms: number): Reminder | undefined {
  const edits = head.editCount - (head.file?.editCount ?? 0);
  if (edits <= 0) return undefined;
  const days = (now_ms - (head.file?.savedAt_ms ?? head.madeAt_ms)) / DAY_ms;
  if (edits < OLD_COPY_EDITS && days < OLD_COPY_days) return undefined;
  if (!head.file) return { kind: "never", edits };
  return { kind: "old", edits, days: Math.max(0, Math.floor(days)), name: head.file.name };
}

/** The reminder as a sentence. */
export function reminderSentence(reminder: Reminder): string {
  const edits = reminder.edits === 1 ? "one edit" : `${reminder.edits} edits`;
  if (reminder.kind === "never")
    return `This job has no copy as a file yet, and ${edits} would be lost with the browser's data.`;
  const age = reminder.days === 0 ? "today" : reminder.days === 1 ? "yesterday" : `${reminder.days} days ago`;
  return `The last file copy, ${reminder.name}, was saved ${age}; ${edits} since are in this browser only.`;
}
