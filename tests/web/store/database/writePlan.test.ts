import { describe, expect, it } from "vitest";
import type { JobWrite } from "../../../../web/store/database/jobStore.ts";
import { PAUSE_ms } from "../../../../web/store/database/versionPolicy.ts";
import { amendHead, journalAfterWrite, planWrite } from "../../../../web/store/database/writePlan.ts";
import { newHead } from "../../../../web/store/newHead.ts";

const NOW_ms = 1_700_000_000_000;
const head = newHead({ id: "j", title: "Saloon", line: "a line", session: "a", now_ms: NOW_ms, reason: "made" });
const commit = {
  job: { frame: {}, lists: new Map() },
  title: "Estate",
  line: "another line",
  reason: "load 150 kg to 180 kg",
  edits: 2,
  isMilestone: false,
};
const write: JobWrite = { id: "j", expected: 1, session: "b", step: 7, now_ms: NOW_ms + 1000, drafts: {}, commit };

describe("a write", () => {
  it("goes ahead only on the revision that it builds on", () => {
    expect(planWrite(undefined, write)).toEqual({ answer: { kind: "vanished" }, keepsOldBody: false });
    const removed = { ...head, shelf: "removed" as const };
    expect(planWrite(removed, write).answer).toEqual({ kind: "removed", head: removed });
    const later = { ...head, revision: 2 };
    expect(planWrite(later, write).answer).toEqual({ kind: "stale", head: later });
  });

  it("of an edit soon after the last goes on with the version that stands", () => {
    const version = { number: 1, startedAt_ms: NOW_ms, endedAt_ms: NOW_ms + 1000, reason: commit.reason, edits: 2 };
    expect(planWrite(head, write)).toEqual({
      answer: {
        kind: "written",
        head: {
          ...head,
          revision: 2,
          title: "Estate",
          line: "another line",
          changedAt_ms: NOW_ms + 1000,
          writer: "b",
          writerStep: 7,
          editCount: 2,
          version,
        },
      },
      keepsOldBody: false,
    });
  });

  it("after a pause keeps the old state and begins the next version", () => {
    const now_ms = NOW_ms + PAUSE_ms;
    const { answer, keepsOldBody } = planWrite({ ...head, editCount: 5 }, { ...write, now_ms });
    expect(keepsOldBody).toBe(true);
    expect(answer).toMatchObject({
      head: { editCount: 7, version: { number: 2, startedAt_ms: now_ms, endedAt_ms: now_ms, edits: 2 } },
    });
  });

  it("of drafts alone leaves the version and the title", () => {
    const { commit: _edit, ...drafts } = write;
    const { answer, keepsOldBody } = planWrite(head, { ...drafts, now_ms: NOW_ms + PAUSE_ms });
    expect(keepsOldBody).toBe(false);
    expect(answer).toMatchObject({
      head: { revision: 2, title: "Saloon", editCount: 0, version: head.version, changedAt_ms: NOW_ms + PAUSE_ms },
    });
  });
});

it("changes a head by what is given, and takes away what is given as undefined", () => {
  const noted = amendHead(head, { note: "a copy", shelf: "archived" });
  expect(noted).toEqual({ ...head, note: "a copy", shelf: "archived" });
  expect(amendHead(noted, { removedAt_ms: 5 })).toEqual({ ...noted, removedAt_ms: 5 });
  expect(amendHead(noted, { note: undefined })).toEqual({ ...head, shelf: "archived" });
});

it("drops a journal entry that the save carried, and builds a later one on the save", () => {
  const entry = { jobId: "j", session: "b", step: 7, base: 1, at_ms: NOW_ms, drafts: {} };
  const saved = { ...head, revision: 2 };
  expect(journalAfterWrite(entry, write, saved)).toBeUndefined();
  expect(journalAfterWrite({ ...entry, step: 8 }, write, saved)).toEqual({ ...entry, step: 8, base: 2 });
});
