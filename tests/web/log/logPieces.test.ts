import { expect, it } from "vitest";
import { longestDay, medianDay, pieceChoices } from "../../../web/log/logPieces.ts";
import { dayWords, problemWords } from "../../../web/log/logText.ts";
import { durationWords } from "../../../web/log/readingWords.ts";
import type { DayRow } from "../../../web/worker/roads/roadsApi.ts";

function day(date: string, distance_m: number, trips = 2): DayRow {
  return { date, trips, distance_m, driving_s: 1800, climb_m: 10 };
}

const days = [day("2024-05-03", 42_000), day("2024-05-04", 0, 0), day("2024-05-05", 12_000), day("2024-05-06", 81_000)];

it("finds the middle and the longest of the days with a drive", () => {
  expect(medianDay({ days })?.date).toBe("2024-05-03");
  expect(longestDay({ days })?.date).toBe("2024-05-06");
  expect(medianDay({ days: days.slice(1) })?.date).toBe("2024-05-06"); // of two middle ones the longer
  expect(medianDay({ days: [day("2024-05-04", 0, 0)] })).toBeUndefined();
});

it("names no day, no clock and no file in the title of a road", () => {
  const trip = { date: "2024-05-03", clock: "08:12", distance_m: 21_000 };
  const choices = pieceChoices({ days, trips: [trip, trip] }, "british");
  expect(choices.map(({ key }) => key)).toEqual([
    "whole",
    "day:2024-05-03",
    "day:2024-05-05",
    "day:2024-05-06",
    "trip:0",
    "trip:1",
  ]);
  for (const { title } of choices) expect(title).not.toMatch(/2024|May|08:12/);
  expect(choices[1].words).toBe("Fri 3 May 2024, 26.1 miles");
});

it("calls days of a log without a date by their number", () => {
  expect(dayWords("1970-01-01")).toBe("day 1");
  expect(dayWords("1970-01-03")).toBe("day 3");
});

it.each([
  [40, "40 s"],
  [1430, "24 min"],
  [11_520, "3 h 12 min"],
])("says %d s as %s", (duration_s, words) => {
  expect(durationWords(duration_s)).toBe(words);
});

it("speaks of no option of the command line", () => {
  const problem = { code: "noDate", where: "b.csv", message: "found no day: read it alone, or give --date" };
  expect(problemWords(problem)).toBe("b.csv: found no day: read it alone, or give the date");
});
