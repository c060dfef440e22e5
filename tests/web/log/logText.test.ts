import { expect, it } from "vitest";
import { dayWords, durationWords, problemWords } from "../../../web/log/logText.ts";
import { expectWrittenOnce } from "../../support/writtenOnce.ts";

it("calls options of the command line as the page does", () => {
  expect(problemWords({ code: "x", where: "a.csv", message: "wanted is --speed-unit." })).toBe(
    "a.csv: wanted is the unit of speed",
  );
});

it("writes days, and numbers those of a log that counts from its start", () => {
  expect(dayWords("2024-05-03")).toBe("Fri 3 May 2024");
  expect(dayWords("1970-01-01")).toBe("day 1");
  expect(dayWords("1970-01-03")).toBe("day 3");
});

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
