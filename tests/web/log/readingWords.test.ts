import { expect, it } from "vitest";
import { durationWords } from "../../../web/log/readingWords.ts";
import { expectWrittenOnce } from "../../support/writtenOnce.ts";

it.each([
  [40, "40 s"],
  [89.4, "89 s"],
  [89.6, "2 min"],
  [90, "2 min"],
  [1440, "24 min"],
  [11_520, "3 h 12 min"],
])("%f s are %s", (duration_s, words) => {
  expect(durationWords(duration_s)).toBe(words);
});

it("no time is written in two ways at the borders of its units", () => {
  expectWrittenOnce(durationWords, [60, 90, 120, 3600, 7200], { s: 1, min: 60, h: 3600 });
});
