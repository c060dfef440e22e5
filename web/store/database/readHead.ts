import type { JobHead } from "./jobRecord.ts";

/**
 * Whether a record found in the database is a job's head. The database is ours, but it outlives this edition of the
 * program, and one record that cannot be understood must not take the whole list down.
 */
export function isHead(record: unknown): record is JobHead {
  if (typeof record !== "object" || record === null) return false;
  const head = record as Partial<Record<keyof JobHead, unknown>>;
  const version = head.version as Partial<Record<keyof JobHead["version"], unknown>> | undefined;
  return (
    [head.id, head.title, head.line, head.writer].every((text) => typeof text === "string") &&
    [head.revision, head.madeAt_ms, head.changedAt_ms, head.writerStep, head.editCount].every(Number.isFinite) &&
    (head.shelf === "open" || head.shelf === "archived" || head.shelf === "removed") &&
    typeof version === "object" &&
    version !== null &&
    [version.number, version.startedAt_ms, version.endedAt_ms, version.edits].every(Number.isFinite)
  );
}
