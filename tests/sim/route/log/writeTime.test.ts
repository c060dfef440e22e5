import { expect, it } from "vitest";
import { writeDuration, writeInterval } from "../../../../sim/route/log/writeTime.ts";
import { expectWrittenOnce } from "../../../support/writtenOnce.ts";

it.each([
  [31, "31 s"],
  [245, "4 min 5 s"],
  [300, "5 min"],
  [11_520, "3 h 12 min"],
  [7200, "2 h"],
  [46 * 86_400, "46 days"],
  [2 * 86_400 - 1, "2 days"],
])("%d s are a length of time of %s", (duration_s, words) => {
  expect(writeDuration(duration_s)).toBe(words);
});

it.each([
  [0.2, "0.2 s"],
  [1, "1 s"],
  [30, "30 s"],
  [120, "2 min"],
  [300, "5 min"],
  [3600, "1 h"],
  [59.7, "1 min"],
])("fixes %d s apart are %s apart", (interval_s, words) => {
  expect(writeInterval(interval_s)).toBe(words);
});

it("no time is written in two ways at the borders of its units", () => {
  const sizes = { s: 1, min: 60, h: 3600, days: 86_400 };
  expectWrittenOnce(writeDuration, [60, 3600, 2 * 86_400], sizes);
  expectWrittenOnce(writeInterval, [1, 10, 60, 3600, 2 * 86_400], sizes);
});
