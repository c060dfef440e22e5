import { expect, it } from "vitest";
import { nmeaClock_s, nmeaDay_s } from "../../../../sim/route/nmea/nmeaTime.ts";

it("reads hhmmss with its fraction", () => {
  expect(nmeaClock_s("123519")).toBe(12 * 3600 + 35 * 60 + 19);
  expect(nmeaClock_s("123519.25")).toBe(45_319.25);
  for (const none of [undefined, "", "12351", "991234"]) expect(nmeaClock_s(none)).toBeUndefined();
});

it("reads ddmmyy, of the last century from 80 on", () => {
  expect(nmeaDay_s("230394")).toBe(Date.UTC(1994, 2, 23) / 1000);
  expect(nmeaDay_s("290224")).toBe(Date.UTC(2024, 1, 29) / 1000);
  for (const none of [undefined, "", "310224", "2302"]) expect(nmeaDay_s(none)).toBeUndefined();
});
