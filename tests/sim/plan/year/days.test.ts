import { describe, expect, it } from "vitest";
import { inventedYear } from "../../../../shared/job/inventedYear.ts";
import { DAYS, daysOfYear } from "../../../../sim/plan/year/days.ts";

const year = { ...inventedYear, scatter_K: 0, holidayWeeks: 0 };
const count = (days: ReturnType<typeof daysOfYear>, kind: string) => days.filter((day) => day.kind === kind).length;

describe("the days of a year", () => {
  it("are 365 from 1 Jan to 31 Dec", () => {
    const days = daysOfYear({ usualDay_km: 30, year });
    expect(days).toHaveLength(DAYS);
    expect([days[0].date, days[58].date, days[59].date, days[364].date]).toEqual([
      "1 Jan",
      "28 Feb",
      "1 Mar",
      "31 Dec",
    ]);
  });

  it("are driven on so many days of each week, and not in holidays", () => {
    // 52 weeks of five days and the 365th day, which is a first one.
    expect(count(daysOfYear({ usualDay_km: 30, year }), "usual")).toBe(261);
    expect(count(daysOfYear({ usualDay_km: 30, year: { ...year, holidayWeeks: 4 } }), "usual")).toBeGreaterThanOrEqual(
      240,
    );
    expect(count(daysOfYear({ usualDay_km: 30, year: { ...year, holidayWeeks: 4 } }), "usual")).toBeLessThanOrEqual(
      241,
    );
    expect(count(daysOfYear({ usualDay_km: 30, year: { ...year, daysAWeek: 7 } }), "usual")).toBe(365);
  });

  it("have the longest day as often as it comes, in place of a usual one, apart from one another", () => {
    const days = daysOfYear({ usualDay_km: 30, longestDay_km: 80, longestDaysAYear: 4, year });
    const at = days.flatMap(({ kind, distance_km }, day) => (kind === "longest" && distance_km === 80 ? [day] : []));
    expect(at).toHaveLength(4);
    expect(count(days, "usual")).toBe(257);
    for (let k = 1; k < 4; k++) expect(at[k] - at[k - 1]).toBeGreaterThan(80);
    expect(count(daysOfYear({ usualDay_km: 90, longestDay_km: 80, year }), "longest")).toBe(0);
  });

  it("are as warm as their months: the mean of a month within what straight lines between middles make of it", () => {
    const days = daysOfYear({ usualDay_km: 30, year });
    const january = days.slice(0, 31).map(({ temperature_degC }) => temperature_degC);
    const mean = january.reduce((sum, each) => sum + each, 0) / 31;
    // Lines through the middles miss a month's mean by an eighth of what it differs from its neighbours by: (2 - 3) + (2 - 3) = -2.
    expect(Math.abs(mean - 2 - 2 / 8)).toBeLessThan(0.05);
    expect(days[15].temperature_degC).toBeCloseTo(2, 1);
  });

  it("lie about that with the standard deviation that is said, and never beyond √6 of it", () => {
    const off = daysOfYear({ usualDay_km: 30, year: { ...year, months_degC: Array(12).fill(10), scatter_K: 3 } }).map(
      ({ temperature_degC }) => temperature_degC - 10,
    );
    const mean = off.reduce((sum, each) => sum + each, 0) / DAYS;
    const deviation = Math.sqrt(off.reduce((sum, each) => sum + each * each, 0) / DAYS);
    expect(Math.abs(mean)).toBeLessThan(0.05);
    expect(Math.abs(deviation / 3 - 1)).toBeLessThan(0.02);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(3 * Math.sqrt(6));
  });

  it("are of different lengths where the usual day is, evenly and in the mean the usual one", () => {
    const lengths = daysOfYear({ usualDay_km: 40, year: { ...year, daysAWeek: 7, spread_frac: 0.25 } }).map(
      ({ distance_km }) => distance_km,
    );
    expect(Math.min(...lengths)).toBeGreaterThanOrEqual(30);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(50);
    expect(Math.abs(lengths.reduce((sum, each) => sum + each, 0) / DAYS - 40)).toBeLessThan(0.1);
  });

  it("count as winter's in the three coldest months, wherever they are", () => {
    const south = { ...year, months_degC: [...year.months_degC.slice(6), ...year.months_degC.slice(0, 6)] };
    const winter = (of: typeof year) =>
      daysOfYear({ usualDay_km: 30, year: of }).flatMap(({ isWinter, date }) => (isWinter ? [date] : []));
    expect(winter(year)).toHaveLength(31 + 28 + 31);
    expect(winter(south)).toContain("15 Jul");
  });
});
