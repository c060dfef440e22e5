import type { Commit, JobHead } from "./jobRecord.ts";

/** How many past states of a job are kept beside the present one. */
export const KEPT_VERSIONS = 20;

/** A rest this long between two edits ends a version. */
export const PAUSE_ms = 2 * 60_000;

/** A version that runs on without a rest is ended after this long all the same. */
export const LONGEST_VERSION_ms = 15 * 60_000;

/**
 * Whether an edit begins a new version, so that the state before it is kept: after a pause, in another session, after
 * a quarter of an hour without a pause, and where the edit replaces the whole job.
 */
export function startsVersion(head: JobHead, session: string, now_ms: number, commit: Commit): boolean {
  return (
    commit.isMilestone ||
    head.version.session !== session ||
    now_ms - head.version.endedAt_ms >= PAUSE_ms ||
    now_ms - head.version.startedAt_ms >= LONGEST_VERSION_ms
  );
}

/** The numbers of those versions that are too many: all but the newest KEPT_VERSIONS. */
export function surplusVersions(numbers: readonly number[]): number[] {
  return [...numbers].sort((a, b) => b - a).slice(KEPT_VERSIONS);
}
