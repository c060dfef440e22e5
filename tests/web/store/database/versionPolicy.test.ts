import { describe, expect, it } from "vitest";
import {
  KEPT_DAYS,
  KEPT_VERSIONS,
  LONGEST_VERSION_ms,
  PAUSE_ms,
  startsVersion,
  surplusVersions,
} from "../../../../web/store/database/versionPolicy.ts";
import { newHead } from "../../../../web/store/newHead.ts";

const NOW_ms = 1_700_000_000_000;
const HOUR_ms = 3_600_000;
const DAY_ms = 24 * HOUR_ms;
const head = newHead({ id: "j", title: "t", line: "l", session: "a", now_ms: NOW_ms, reason: "made" });
const commit = {
  job: { frame: {}, lists: new Map() },
  title: "t",
  line: "l",
  reason: "r",
  edits: 1,
  isMilestone: false,
};

describe("a version", () => {
  it.each([
    [PAUSE_ms - 1, 0, false],
    [PAUSE_ms, 0, true],
    [LONGEST_VERSION_ms, LONGEST_VERSION_ms - 1000, true],
    [-1, 0, true], // the clock was set back
  ])("begins %i ms after the last began, which ended after %i ms: %s", (later_ms, ended_ms, begins) => {
    const version = { ...head.version, endedAt_ms: NOW_ms + ended_ms };
    expect(startsVersion({ ...head, version }, NOW_ms + later_ms, commit)).toBe(begins);
  });
});

describe("versions that are too many", () => {
  it("are those of days that have newer ones, past the newest twenty", () => {
    // Two a day for the last forty days, then thirty of today.
    const past = Array.from({ length: 80 }, (_, i) => ({
      number: i + 1,
      endedAt_ms: NOW_ms + (i - 80) * 12 * HOUR_ms,
    }));
    const today = Array.from({ length: 30 }, (_, i) => ({ number: 81 + i, endedAt_ms: NOW_ms + DAY_ms + i }));
    const versions = [...past, ...today];
    const gone = new Set(surplusVersions(versions));
    const kept = versions.filter(({ number }) => !gone.has(number));
    expect(kept).toHaveLength(KEPT_VERSIONS + KEPT_DAYS);
    expect(kept.slice(-KEPT_VERSIONS)).toEqual(today.slice(-KEPT_VERSIONS));
    const days = kept.slice(0, KEPT_DAYS).map(({ endedAt_ms }) => Math.floor(endedAt_ms / DAY_ms));
    expect(new Set(days).size).toBe(KEPT_DAYS);
    const lastOfDay = (day: number) => past.filter(({ endedAt_ms }) => Math.floor(endedAt_ms / DAY_ms) === day).at(-1);
    expect(kept.slice(0, KEPT_DAYS)).toEqual(days.map(lastOfDay));
  });
});
