import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { outlookRows } from "../../../../sim/plan/measured/outlookRows.ts";

const year = (failingDays: number) => [
  { age_years: 0, failingDays: 0 },
  { age_years: 10, failingDays },
];
const lines = {
  predicted: {
    range_km: 61.9,
    drivenDays: 240,
    year: year(2),
    week: [
      { condition: "new", lowest_frac: 0.414, failingDays: 0 },
      { condition: "winter", lowest_frac: 0.1, failingDays: 0 },
    ],
  },
  corrected: {
    range_km: 52.2,
    drivenDays: 240,
    year: year(31),
    week: [
      { condition: "new", lowest_frac: 0.29, failingDays: 0 },
      { condition: "winter", lowest_frac: 0.05, failingDays: 1 },
    ],
  },
};

it("sets range, year and week of either line side by side, whole and with their units", () => {
  const rows = outlookRows(lines).map(({ what, predicted, corrected }) =>
    [what, predicted, corrected].map((words) => messageIn(words, "metric")),
  );
  expect(rows).toEqual([
    ["Range on the job’s road", "61 km", "52 km"],
    ["Days of the year not home, pack new", "0 of 240", "0 of 240"],
    ["Days of the year not home, at 10 years", "2 of 240", "31 of 240"],
    ["Lowest charge in the week, new", "41 %", "29 %"],
    ["Lowest charge in the week, winter", "10 %", "1 day not done"],
  ]);
  // 61 km are 37.9 miles: never more than the range.
  expect(messageIn(outlookRows(lines)[0]?.predicted ?? [], "british")).toBe("38 miles");
});
