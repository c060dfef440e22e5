import { expect, it } from "vitest";
import { newHead } from "../../../web/store/newHead.ts";

const made = { id: "a", title: "Saloon", line: "one", session: "s", now_ms: 5, reason: "new" };

it("is a first revision and a first version without edits", () => {
  expect(newHead(made)).toMatchObject({
    revision: 1,
    editCount: 0,
    shelf: "open",
    version: { number: 1, startedAt_ms: 5 },
  });
});

it("has a note and a file only where there is one", () => {
  expect(newHead(made)).not.toHaveProperty("note");
  expect(newHead({ ...made, note: "" })).toHaveProperty("note", "");
});
