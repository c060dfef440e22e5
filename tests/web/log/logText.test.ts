import { expect, it } from "vitest";
import { dayWords, problemWords } from "../../../web/log/logText.ts";

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
