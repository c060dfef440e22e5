import { describe, expect, it } from "vitest";
import {
  dateParts,
  dayStart_s,
  readClock_s,
  readDate_s,
  readIsoMoment,
  readPackedClock_s,
  splitDateTime,
} from "../../../../sim/route/log/readTime.ts";

const MORNING_s = Date.UTC(2024, 4, 3, 8, 12, 5) / 1000;
const MAY_3_s = Date.UTC(2024, 4, 3) / 1000;

describe("a moment", () => {
  it.each([
    ["2024-05-03T08:12:05.25+02:00", MORNING_s - 7200 + 0.25, 7200],
    ["2024-05-03T08:12:05Z", MORNING_s, 0],
    ["2024/5/3 8:12:05", MORNING_s, undefined],
    ["03-May-2024 08:12:05.5", MORNING_s + 0.5, undefined],
    ["Fri May 03 08:12:05 GMT+02:00 2024", MORNING_s - 7200, 7200],
  ])("%s is read with its zone, where it has one", (text, time_s, utcOffset_s) => {
    expect(readIsoMoment(text)).toEqual({ time_s, utcOffset_s });
  });
  it.each(["2024-02-31 08:00", "2024-05-03 25:00", "2024-05-03", "soon"])("%s is none", (text) => {
    expect(readIsoMoment(text)).toBeUndefined();
  });
});

it.each([
  ["8:12", 29_520],
  ["08:12:05.5", 29_525.5],
  ["8:12:05 pm", 72_725],
  ["12:00:00 am", 0],
  ["13:00 pm", undefined],
  ["8:75", undefined],
])("the clock %s is %s s of the day", (text, time_s) => {
  expect(readClock_s(text)).toBe(time_s);
});

it.each([
  ["081205", 29_525],
  ["81205.5", 29_525.5],
  ["08120550", 29_525.5],
  ["087605", undefined],
])("the clock %s without signs is %s s of the day", (text, time_s) => {
  expect(readPackedClock_s(text)).toBe(time_s);
});

it("reads a date in the order given, two digits of a year being of this century up to 79", () => {
  expect(readDate_s("03/05/2024", "dmy")).toBe(MAY_3_s);
  expect(readDate_s("05/03/2024", "mdy")).toBe(MAY_3_s);
  expect(readDate_s("2024-05-03", "dmy")).toBe(MAY_3_s);
  expect(readDate_s("03.05.79", "dmy")).toBe(Date.UTC(2079, 4, 3) / 1000);
  expect(readDate_s("03.05.80", "dmy")).toBe(Date.UTC(1980, 4, 3) / 1000);
});

it("takes dates and clocks apart as they are written", () => {
  expect(dateParts("20240503")).toEqual([2024, 5, 3]);
  expect(splitDateTime("03.05.2024 08:12:05")).toEqual(["03.05.2024", "08:12:05"]);
  expect(splitDateTime("08:12:05")).toBeUndefined();
});

it("knows which days there are", () => {
  expect(dayStart_s(2024, 2, 29)).toBe(Date.UTC(2024, 1, 29) / 1000);
  expect(dayStart_s(2023, 2, 29)).toBeUndefined();
  expect(dayStart_s(1969, 12, 31)).toBeUndefined();
});
