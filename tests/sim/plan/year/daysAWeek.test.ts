import { describe, expect, it } from "vitest";
import { drivenDaysAWeek } from "../../../../sim/plan/year/daysAWeek.ts";

const MONDAY_ms = Date.UTC(2024, 3, 29);
const date = (day: number) => new Date(MONDAY_ms + day * 86_400_000).toISOString().slice(0, 10);
/** Dates of so many days from a Monday on, those whose place in the week is among the ones given. */
const week = (days: number, ...driven: readonly number[]) =>
  Array.from({ length: days }, (_, day) => day)
    .filter((day) => driven.includes(day % 7))
    .map(date);

describe("driven days a week", () => {
  it("are as many as the week has, wherever the log begins and ends, in any order", () => {
    for (const driven of [[2], [0, 5], [0, 2, 4], [0, 1, 2, 3, 4], [0, 1, 2, 3, 4, 5], [0, 1, 2, 3, 4, 5, 6]])
      for (const cut of [0, 1, 2, 3, 4, 5, 6]) {
        const dates = week(7 * 8, ...driven).slice(cut);
        expect(drivenDaysAWeek([...dates].reverse())).toBe(driven.length);
      }
  });

  it("stay those of the weeks that were driven where a holiday lies between", () => {
    const dates = [
      ...week(28, 0, 1, 2, 3),
      ...week(28, 0, 1, 2, 3).map((_, i) => date(49 + Math.floor(i / 4) * 7 + (i % 4))),
    ];
    expect(drivenDaysAWeek(dates)).toBe(4);
  });

  it("count a day once, however often it is given", () => {
    expect(drivenDaysAWeek([...week(14, 1, 3), ...week(14, 1, 3)])).toBe(2);
  });

  it("are not told by dates that span no week, by one day, by none or by days that have no date", () => {
    expect(drivenDaysAWeek(week(6, 0, 1, 2, 3, 4, 5))).toBeUndefined();
    expect(drivenDaysAWeek(week(7, 0, 6))).toBe(2);
    expect(drivenDaysAWeek([date(3)])).toBeUndefined();
    expect(drivenDaysAWeek([])).toBeUndefined();
    expect(drivenDaysAWeek(["day 1", "day 9"])).toBeUndefined();
  });
});
