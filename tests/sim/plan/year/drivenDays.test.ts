import { expect, it } from "vitest";
import { dayAtShare_km, middleDay_km } from "../../../../sim/plan/year/drivenDays.ts";

it("takes the middle one of days in any order, of two middle ones the longer", () => {
  expect(middleDay_km([90, 12, 30])).toBe(30);
  expect(middleDay_km([12, 90, 30, 40])).toBe(40);
  expect(middleDay_km([7])).toBe(7);
});

it("finds at each share of a list a day of that list, and at its ends the shortest and the longest", () => {
  const list_km = [12, 30, 90, 95];
  expect([0, 0.2499, 0.25, 0.5, 0.75, 0.9999, 1].map((share) => dayAtShare_km(list_km, share))).toEqual([
    12, 12, 30, 90, 95, 95, 95,
  ]);
});
