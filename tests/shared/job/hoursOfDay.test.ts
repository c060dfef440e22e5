import { expect, it } from "vitest";
import { clock_h, common_h, span_h } from "../../../shared/job/hoursOfDay.ts";

it("reads a time of day in hours", () => {
  expect(clock_h("23:30")).toBe(23.5);
  expect(clock_h("0:15")).toBe(0.25);
});

it.each([
  ["23:30", "7:30", 8],
  ["7:30", "23:30", 16],
  ["18:00", "0:00", 6],
  ["0:00", "23:59", 23 + 59 / 60],
])("from %s to %s are %f h", (from, to, hours_h) => {
  expect(span_h({ from, to })).toBeCloseTo(hours_h, 12);
});

it.each([
  ["overnight within overnight", { from: "18:00", to: "8:00" }, { from: "23:30", to: "7:30" }, 8],
  ["overnight and a day", { from: "8:00", to: "17:00" }, { from: "23:30", to: "7:30" }, 0],
  ["an evening that runs into the cheap hours", { from: "20:00", to: "2:00" }, { from: "23:30", to: "7:30" }, 2.5],
  ["until midnight", { from: "20:00", to: "0:00" }, { from: "23:30", to: "7:30" }, 0.5],
])("%s share so many hours, whichever comes first", (_, one, other, hours_h) => {
  expect(common_h(one, other)).toBeCloseTo(hours_h, 12);
  expect(common_h(other, one)).toBeCloseTo(hours_h, 12);
});
