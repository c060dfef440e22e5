import { describe, expect, it } from "vitest";
import type { JobHead } from "../../../../web/store/database/jobRecord.ts";
import {
  fileReminder,
  OLD_COPY_days,
  OLD_COPY_EDITS,
  reminderSentence,
} from "../../../../web/store/files/fileReminder.ts";
import { newHead } from "../../../../web/store/newHead.ts";

const DAY_ms = 86_400_000;
const NOW_ms = 1_700_000_000_000;

function head(
  editCount: number,
  age_days: number,
  file?: { readonly editCount: number; readonly age_days: number },
): JobHead {
  const made = newHead({ id: "j", title: "S", line: "", session: "a", now_ms: NOW_ms - age_days * DAY_ms, reason: "" });
  const savedAt_ms = NOW_ms - (file?.age_days ?? 0) * DAY_ms;
  return { ...made, editCount, ...(file && { file: { name: "s.json", savedAt_ms, editCount: file.editCount } }) };
}

describe("the reminder to save a file", () => {
  it.each([
    ["no edit was ever made", head(0, 400), undefined],
    ["a few edits of today", head(OLD_COPY_EDITS - 1, 0), undefined],
    ["many edits and no file", head(OLD_COPY_EDITS, 0), { kind: "never", edits: OLD_COPY_EDITS }],
    ["one edit a fortnight ago and no file", head(1, OLD_COPY_days), { kind: "never", edits: 1 }],
    ["a file that has every edit, however old", head(50, 400, { editCount: 50, age_days: 300 }), undefined],
    ["a recent file and few edits since", head(50, 400, { editCount: 45, age_days: 13.9 }), undefined],
    [
      "an old file and one edit since",
      head(50, 400, { editCount: 49, age_days: 14 }),
      { kind: "old", edits: 1, days: 14 },
    ],
    [
      "a new file and many edits since",
      head(80, 400, { editCount: 50, age_days: 0 }),
      { kind: "old", edits: 30, days: 0 },
    ],
  ] as const)("after %s", (_, of, wanted) => {
    const found = fileReminder(of, NOW_ms);
    if (wanted) expect(found).toMatchObject(wanted);
    else expect(found).toBeUndefined();
  });

  it("is a sentence with the numbers in it", () => {
    expect(reminderSentence({ kind: "never", edits: 1 })).toContain("one edit would be lost");
    expect(reminderSentence({ kind: "old", edits: 31, days: 16, name: "s.json" })).toBe(
      "The last file copy, s.json, was saved 16 days ago; 31 edits since are in this browser only.",
    );
  });
});
