import { describe, expect, it } from "vitest";
import { inventedYear } from "../../../../shared/job/inventedYear.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { drivenDaysWords } from "../../../../sim/plan/year/drivenDaysWords.ts";

const wordsOf = (daysDriven_km: number[] | undefined, usualDay_km: number, longestDay_km?: number) =>
  drivenDaysWords({
    usualDay_km,
    ...(longestDay_km !== undefined && { longestDay_km }),
    year: { ...inventedYear, ...(daysDriven_km && { daysDriven_km }) },
  }).map((each) => messageIn(each, "metric"));

describe("where the driven days of a year come from", () => {
  it("is not said where the year lists none", () => {
    expect(wordsOf(undefined, 40)).toEqual([]);
  });

  it("is said with their count and span, as they were driven where the usual day is their middle one", () => {
    expect(wordsOf([28, 90, 30, 12, 31, 29], 30)).toEqual([
      "Driven days are drawn evenly from the 6 of the list, 12 km to 90 km, as they were driven: their middle one is the usual day.",
    ]);
  });

  it("is said with the factor where the usual day has been moved: 40 for a middle one of 30 is 1.33", () => {
    expect(wordsOf([28, 90, 30, 12, 31], 40)[0]).toMatch(
      /each times 1\.33, so that their middle one, 30 km, is the usual day of 40 km\.$/,
    );
  });

  it("says that fewer than five do not tell a week, and that one gives nothing to distribute", () => {
    expect(wordsOf([28, 90, 30, 12], 30)[1]).toBe("4 days are few: they do not tell a week.");
    expect(wordsOf([28, 90, 30, 12, 31], 30)).toHaveLength(1);
    expect(wordsOf([28], 40)).toEqual([
      "The list has one day, which gives nothing to distribute: every driven day is the usual one of 40 km.",
    ]);
  });

  it("says which are as long as the longest day, as they count", () => {
    expect(wordsOf([28, 90, 30, 12, 31], 30, 90)[1]).toMatch(/^One of them is as long as the longest day/);
    // Twice as long by the usual day of 60: 62, 60 and 180 reach 60.
    expect(wordsOf([28, 90, 30, 12, 31], 60, 60)[1]).toMatch(/^3 of them are as long as the longest day/);
    expect(wordsOf([28, 90, 30, 12, 31], 30, 91)).toHaveLength(1);
  });
});
