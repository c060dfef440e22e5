import type { FileCopy, JobHead } from "./database/jobRecord.ts";

/** What a new record is made from. */
export interface NewJob {
  readonly id: string;
  readonly title: string;
  readonly line: string;
  readonly session: string;
  readonly now_ms: number;
  /** How the job came about, as the reason of its first version. */
  readonly reason: string;
  readonly note?: string;
  readonly file?: FileCopy;
}

/** The head of a job that was just made: first revision, first version, no edits. */
export function newHead({ id, title, line, session, now_ms, reason, note, file }: NewJob): JobHead {
  return {
    id,
    revision: 1,
    title,
    line,
    shelf: "open",
    madeAt_ms: now_ms,
    changedAt_ms: now_ms,
    writer: session,
    writerStep: 0,
    editCount: 0,
    version: { number: 1, startedAt_ms: now_ms, endedAt_ms: now_ms, reason, edits: 0 },
    ...(note !== undefined && { note }),
    ...(file !== undefined && { file }),
  };
}
