import { expect, it } from "vitest";
import { isHead } from "../../../../web/store/database/readHead.ts";
import { newHead } from "../../../../web/store/newHead.ts";

const head = newHead({ id: "j", title: "S", line: "a car", session: "a", now_ms: 1, reason: "made" });

it("takes a head for a head", () => {
  expect(isHead(head)).toBe(true);
});

it.each([
  ["nothing", undefined],
  ["a text", "head"],
  ["a title that is no text", { ...head, title: 5 }],
  ["a revision that is no number", { ...head, revision: "1" }],
  ["a shelf nobody knows", { ...head, shelf: "lost" }],
  ["no version", { ...head, version: undefined }],
  ["a version without a number", { ...head, version: { ...head.version, number: Number.NaN } }],
])("does not take %s for a head", (_, record) => {
  expect(isHead(record)).toBe(false);
});
