import { describe, expect, it } from "vitest";
import { jobLine } from "../../../web/store/jobLine.ts";
import type { JobHead, LastWords } from "../../../web/store/jobRecord.ts";
import { liftLists } from "../../../web/store/liftedLists.ts";
import { newHead } from "../../../web/store/newHead.ts";
import { fateOfWords } from "../../../web/store/wordsFate.ts";
import { inventedJob } from "../../support/inventedJob.ts";

const head: JobHead = {
  ...newHead({ id: "j", title: "S", line: "", session: "other", now_ms: 0, reason: "" }),
  revision: 5,
  writerStep: 9,
};
const words: LastWords = { jobId: "j", session: "dead", step: 3, base: 5, at_ms: 0, drafts: {} };
const job = inventedJob();
const commit = { job: liftLists(job), title: job.title, line: jobLine(job), reason: "", edits: 1, isMilestone: false };

describe("the last words of a page that is gone", () => {
  it.each([
    ["apply to the revision they were typed on", words, head, "apply"],
    [
      "apply after later saves of the same session",
      { ...words, base: 3 },
      { ...head, writer: "dead", writerStep: 2 },
      "apply",
    ],
    [
      "are dropped where a save carried them",
      { ...words, base: 3 },
      { ...head, writer: "dead", writerStep: 3 },
      "drop",
    ],
    ["become a copy where another page wrote since", { ...words, base: 4 }, head, "copy"],
    ["become a copy where the job was removed", words, { ...head, shelf: "removed" }, "copy"],
    ["become a copy where the job is gone and they hold it", { ...words, commit }, undefined, "copy"],
    ["are dropped where the job is gone and they hold only drafts", words, undefined, "drop"],
  ] as const)("%s", (_, said, found, fate) => {
    expect(fateOfWords(said, found)).toBe(fate);
  });
});
