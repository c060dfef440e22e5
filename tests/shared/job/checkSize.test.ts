import { expect, it } from "vitest";
import { checkSize } from "../../../shared/job/checkSize.ts";

const named = (count: number) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`key${i}`, i]));

it("takes what a job may hold, and what is no group at all", () => {
  for (const json of [{ a: [1, 2], b: named(2000) }, "text", null, 3]) expect(() => checkSize(json, "a")).not.toThrow();
});

it("refuses more than two thousand values by name, with their place", () => {
  expect(() => checkSize({ origins: named(2001) }, "a")).toThrow(
    "origins: found 2001 values by name, at most 2000 allowed",
  );
  expect(() => checkSize(named(2001), "job.json")).toThrow(/^job\.json: found 2001/);
});

it("refuses eight million values and one, wherever they stand", () => {
  // A list in which the same million stands eight times, and the list itself.
  const million = new Array(1e6).fill(0);
  expect(() => checkSize({ roads: new Array(8).fill(million) }, "a")).toThrow("a: found more than 8000000 values");
  expect(() => checkSize({ roads: new Array(7).fill(million) }, "a")).not.toThrow();
});
