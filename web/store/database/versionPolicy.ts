import type { Commit, JobHead, VersionHead } from "./jobRecord.ts";

/** How many past states of a job are kept beside the present one, */
export const KEPT_VERSIONS = 20;

/** and of how many further days the last state of the day, so that one busy day does not push all history out. */
export const KEPT_DAYS = 30;

/** A rest this long between two edits ends a version. */
export const PAUSE_ms = 2 * 60_000;

/** A version that runs on without a rest is ended after this long all the same. */
export const LONGEST_VERSION_ms = 15 * 60_000;

const DAY_ms = 86_400_000;

/**
 * Whether an edit begins a new version, so that the state before it is kept: after a pause, after a quarter of an hour
 * without a pause, where the clock was set back, and where the edit replaces the whole job. Loading the page is none of these.
 */
export function startsVersion({ version }: JobHead, now_ms: number, { isMilestone }: Commit): boolean {
  return (
    isMilestone ||
    now_ms - version.endedAt_ms >= PAUSE_ms ||
    now_ms - version.startedAt_ms >= LONGEST_VERSION_ms ||
    now_ms < version.startedAt_ms
  );
}

/**
 * The numbers of those versions that are too many: all but the newest KEPT_VERSIONS and, of days (UTC) that none of those
 * is of, the last version of each of the newest KEPT_DAYS.
 */
export function surplusVersions(versions: readonly Pick<VersionHead, "number" | "endedAt_ms">[]): number[] {
  const newestFirst = [...versions].sort((a, b) => b.number - a.number);
  const dayOf = ({ endedAt_ms }: Pick<VersionHead, "endedAt_ms">) => Math.floor(endedAt_ms / DAY_ms);
  const days = new Set(newestFirst.slice(0, KEPT_VERSIONS).map(dayOf));
  const most = days.size + KEPT_DAYS;
  return newestFirst.slice(KEPT_VERSIONS).flatMap((version) => {
    const isKept = !days.has(dayOf(version)) && days.size < most;
    days.add(dayOf(version));
    return isKept ? [] : [version.number];
  });
}
