import { expect, it } from "vitest";
import { TimeReader } from "../../../../sim/route/table/timeReader.ts";

const MAY_3_s = Date.UTC(2024, 4, 3) / 1000;

it("goes on to the next day where a clock turns over at midnight", () => {
  const reader = new TimeReader({ kind: "clock", isPacked: false }, undefined, MAY_3_s, ".");
  const times_s = ["23:59:59", "", "00:00:01"].map((cell) => reader.read(cell, ""));
  expect(times_s).toEqual([MAY_3_s + 86_399, Number.NaN, MAY_3_s + 86_401]);
});

it("takes the day of a clock from the column beside it", () => {
  const reader = new TimeReader({ kind: "clock", isPacked: true }, "dmy", 0, ".");
  expect(reader.read("081205", "03.05.2024")).toBe(MAY_3_s + 29_525);
  expect(reader.zoneless).toBe(1);
});

it("keeps the zone that moments state, and counts those without", () => {
  const reader = new TimeReader({ kind: "iso" }, undefined, 0, ".");
  expect(reader.read("2024-05-03T02:00:00+02:00", "")).toBe(MAY_3_s);
  reader.read("2024-05-03T02:00:00", "");
  expect([reader.utcOffset_s, reader.zoneless]).toEqual([7200, 1]);
  expect(reader.read("never", "")).toBeNaN();
});

it("reads a date in its order", () => {
  const reader = new TimeReader({ kind: "dateTime", order: "mdy", isSure: true }, undefined, 0, ".");
  expect(reader.read("05/03/2024 00:00:10", "")).toBe(MAY_3_s + 10);
});

it("reads a spreadsheet's days and counts of parts of a second", () => {
  // Day 45415 is 3 May 2024; a quarter of a day is six hours.
  const days = new TimeReader({ kind: "dayNumber" }, undefined, 0, ",");
  expect(days.read("45415,25", "")).toBe(MAY_3_s + 21_600);
  const millis = new TimeReader({ kind: "elapsed", perSecond: 1e3, why: "" }, undefined, 0, ".");
  expect(millis.read("1500", "")).toBe(1.5);
});
