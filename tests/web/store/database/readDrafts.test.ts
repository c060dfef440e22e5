import { expect, it } from "vitest";
import { readDrafts } from "../../../../web/store/database/readDrafts.ts";

it("gives drafts back as they were, and puts a bare text of an earlier edition back into its field", () => {
  const draft = { typed: "4 kg", problem: "too light", value: 4 };
  const read = readDrafts({ title: draft, use: "half a wo" });
  expect(read["title"]).toBe(draft);
  expect(read["use"]).toMatchObject({ typed: "half a wo" });
  expect(read["use"]?.problem).not.toBe("");
});

it("gives a draft of a field that had another name to the field of today", () => {
  const draft = { typed: "heavy", problem: "no number" };
  expect(readDrafts({ "vehicle.arriving_kg": draft })).toEqual({ "vehicle.kerb_kg": draft });
});
