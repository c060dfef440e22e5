import type { JobHead, JournalEntry } from "./jobRecord.ts";
import type { HeadChange, JobWrite, WriteAnswer } from "./jobStore.ts";
import { startsVersion } from "./versionPolicy.ts";

/** What a store does for one write: answer, and where the answer is `written`, whether the body before it is kept. */
export interface WritePlan {
  readonly answer: WriteAnswer;
  /** True where the body that is about to be replaced goes among the versions, under the old head's version number. */
  readonly keepsOldBody: boolean;
}

/**
 * Decides a write inside the transaction that carries it out. Only a write that builds on the stored revision goes
 * ahead, so a page that slept through another page's edits cannot put its old state over them.
 */
export function planWrite(head: JobHead | undefined, write: JobWrite): WritePlan {
  if (!head) return { answer: { kind: "vanished" }, keepsOldBody: false };
  if (head.shelf === "removed") return { answer: { kind: "removed", head }, keepsOldBody: false };
  if (head.revision !== write.expected) return { answer: { kind: "stale", head }, keepsOldBody: false };
  const { commit, session, step, now_ms } = write;
  const written = { ...head, revision: head.revision + 1, writer: session, writerStep: step, changedAt_ms: now_ms };
  if (!commit) return { answer: { kind: "written", head: written }, keepsOldBody: false };
  const keepsOldBody = startsVersion(head, now_ms, commit);
  const { version } = head;
  return {
    answer: {
      kind: "written",
      head: {
        ...written,
        title: commit.title,
        line: commit.line,
        editCount: head.editCount + commit.edits,
        version: {
          number: keepsOldBody ? version.number + 1 : version.number,
          startedAt_ms: keepsOldBody ? now_ms : version.startedAt_ms,
          endedAt_ms: now_ms,
          reason: commit.reason,
          edits: (keepsOldBody ? 0 : version.edits) + commit.edits,
        },
      },
    },
    keepsOldBody,
  };
}

/** A head after a change that does not touch the job's content; fields set to `undefined` are taken away. */
export function amendHead(head: JobHead, change: HeadChange): JobHead {
  const { note, removedAt_ms, openingsSince, file, ...kept } = head;
  const optional = { note, removedAt_ms, openingsSince, file, ...change };
  return {
    ...kept,
    shelf: change.shelf ?? head.shelf,
    ...(optional.note !== undefined && { note: optional.note }),
    ...(optional.removedAt_ms !== undefined && { removedAt_ms: optional.removedAt_ms }),
    ...(optional.openingsSince !== undefined && { openingsSince: optional.openingsSince }),
    ...(optional.file !== undefined && { file: optional.file }),
  };
}

/**
 * What becomes of a session's journal entry after a save of the same session: nothing where the save carried it,
 * else the same entry built on the new revision (it was typed while the save was on its way).
 */
export function journalAfterWrite(entry: JournalEntry, write: JobWrite, head: JobHead): JournalEntry | undefined {
  return entry.step <= write.step ? undefined : { ...entry, base: head.revision };
}
