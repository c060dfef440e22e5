import { describe, expect, it } from "vitest";
import { externaliseLists } from "../../../web/store/database/externalLists.ts";
import type { JobHead, JournalEntry } from "../../../web/store/database/jobRecord.ts";
import { jobLine } from "../../../web/store/jobLine.ts";
import { newHead } from "../../../web/store/newHead.ts";
import { fateOfUnsaved } from "../../../web/store/unsavedFate.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const head: JobHead = {
  ...newHead({ id: "j", title: "S", line: "", session: "other", now_ms: 0, reason: "" }),
  revision: 5,
  writerStep: 9,
};
const entry: JournalEntry = { jobId: "j", session: "dead", step: 3, base: 5, at_ms: 0, drafts: {} };
const job = inventedJob();
const commit = {
  job: externaliseLists(job),
  title: job.title,
  line: jobLine(job),
  reason: "",
  edits: 1,
  isMilestone: false,
};

describe("the journal entry of a page that is gone", () => {
  it.each([
    ["is applied to the revision it was typed on", entry, head, "apply"],
    [
      "apply after later saves of the same session",
      { ...entry, base: 3 },
      { ...head, writer: "dead", writerStep: 2 },
      "apply",
    ],
    [
      "are dropped where a save carried them",
      { ...entry, base: 3 },
      { ...head, writer: "dead", writerStep: 3 },
      "drop",
    ],
    ["becomes a copy where another page wrote since", { ...entry, base: 4 }, head, "copy"],
    ["becomes a copy where the job was removed", entry, { ...head, shelf: "removed" }, "copy"],
    ["becomes a copy where the job is gone and it holds it", { ...entry, commit }, undefined, "copy"],
    ["are dropped where the job is gone and it holds only drafts", entry, undefined, "drop"],
  ] as const)("%s", (_, said, found, fate) => {
    expect(fateOfUnsaved(said, found)).toBe(fate);
  });
});
