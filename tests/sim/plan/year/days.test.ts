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

  it("come from the list where there is one, each as often as any other, whatever the spread", () => {
    const daysDriven_km = [90, 12, 30, 31, 28, 29, 33];
    const days = daysOfYear({ usualDay_km: 30, year: { ...year, spread_frac: 0.5, daysDriven_km } });
    const lengths = days.flatMap(({ kind, distance_km }) => (kind === "usual" ? [distance_km] : []));
    expect(lengths).toHaveLength(261);
    for (const km of daysDriven_km) {
      const times = lengths.filter((each) => Math.abs(each - km) < 1e-9).length;
      // 261/7 = 37.3 of each; by this step no share of n places is off by more than about log(n), 5.6 here.
      expect(Math.abs(times - 261 / 7)).toBeLessThan(Math.log(261));
    }
  });

  it("of a list are longer and shorter with the usual day, which is their middle one", () => {
    const at = (usualDay_km: number) =>
      daysOfYear({ usualDay_km, year: { ...year, daysDriven_km: [20, 30, 60] } }).map(({ distance_km }) => distance_km);
    expect([...new Set(at(30))].sort((a, b) => a - b)).toEqual([0, 20, 30, 60]);
    at(45).forEach((km, day) => {
      expect(km).toBeCloseTo(1.5 * at(30)[day], 9);
    });
  });

  it("of a list leave the longest day apart, and are all the usual one where the list has one day", () => {
    const list = { ...year, daysDriven_km: [20, 30, 60] };
    const days = daysOfYear({ usualDay_km: 30, longestDay_km: 80, longestDaysAYear: 4, year: list });
    expect(count(days, "longest")).toBe(4);
    for (const { kind, distance_km } of days) expect(distance_km === 80).toBe(kind === "longest");
    const one = daysOfYear({ usualDay_km: 40, year: { ...year, daysDriven_km: [7], daysAWeek: 7 } });
    for (const { distance_km } of one) expect(distance_km).toBeCloseTo(40, 9);
  });

  it("count as winter's in the three coldest months, wherever they are", () => {
    const south = { ...year, months_degC: [...year.months_degC.slice(6), ...year.months_degC.slice(0, 6)] };
    const winter = (of: typeof year) =>
      daysOfYear({ usualDay_km: 30, year: of }).flatMap(({ isWinter, date }) => (isWinter ? [date] : []));
    expect(winter(year)).toHaveLength(31 + 28 + 31);
    expect(winter(south)).toContain("15 Jul");
  });
});

describe("single days, by hand", () => {
  const flat = { ...year, months_degC: Array<number>(12).fill(10), daysAWeek: 7 };
  it("begin in the middle of their scatter: the second day's lies at 0.914 of it, 1.435 standard deviations up", () => {
    // The triangular law ends at √6; above its middle it is √6 (1 - √(2 (1 - p))), p = 0.5 + (√2 - 1).
    const [first, second, third] = daysOfYear({ usualDay_km: 30, year: { ...flat, scatter_K: 2 } });
    expect(first.temperature_degC).toBeCloseTo(10, 9);
    expect(second.temperature_degC).toBeCloseTo(10 + 2 * Math.sqrt(6) * (1 - Math.sqrt(2 * (1.5 - Math.SQRT2))), 9);
    // The third lies at 1.328 - 1 = 0.328: √6 (√(2 p) - 1).
    const share = 0.5 + 2 * (Math.SQRT2 - 1) - 1;
    expect(third.temperature_degC).toBeCloseTo(10 + 2 * Math.sqrt(6) * (Math.sqrt(2 * share) - 1), 9);
  });
  it("begin with the usual day's length: the second lies at 0.118 of its spread", () => {
    const [first, second] = daysOfYear({ usualDay_km: 40, year: { ...flat, spread_frac: 0.25 } });
    expect(first.distance_km).toBeCloseTo(40, 9);
    // 0.5 + (√5 - 1)/2 less 1 is 0.118: 2 x 0.118 - 1 of a quarter.
    const share = 0.5 + (Math.sqrt(5) - 1) / 2 - 1;
    expect(second.distance_km).toBeCloseTo(40 * (1 + 0.25 * (2 * share - 1)), 9);
  });
  it("are on straight lines from the middle of a month to the next, and from December's to January's", () => {
    // A month is 365/12 days. The first day's middle lies 15.208 - 0.5 before January's: of 100 there 51.64 are left.
    const only = (month: number) =>
      daysOfYear({
        usualDay_km: 30,
        year: { ...flat, scatter_K: 0, months_degC: flat.months_degC.map((_, i) => (i === month ? 100 : 0)) },
      }).map(({ temperature_degC }) => temperature_degC);
    const month_days = 365 / 12;
    expect(only(0)[0]).toBeCloseTo(100 * (0.5 + 0.5 / month_days), 9);
    expect(only(11)[0]).toBeCloseTo(100 * (0.5 - 0.5 / month_days), 9);
    expect(only(0)[30]).toBeCloseTo(100 * (1.5 - 30.5 / month_days), 9);
    expect(only(1)[30]).toBeCloseTo(100 * (30.5 / month_days - 0.5), 9);
    expect(only(0)[364]).toBeCloseTo(100 * (0.5 - 0.5 / month_days), 9);
  });
  it("are off in the thirteenth week of each quarter with four weeks of holidays, the last day among them", () => {
    const days = daysOfYear({ usualDay_km: 30, year: { ...flat, holidayWeeks: 4 } });
    const off = days.flatMap(({ kind }, day) => (kind === "off" ? [day] : []));
    const week = (first: number, length = 7) => Array.from({ length }, (_, i) => first + i);
    expect(off).toEqual([...week(84), ...week(175), ...week(266), ...week(357, 8)]);
    for (const day of off) expect(days[day].distance_km).toBe(0);
  });
  it("have the longest day in the middle of the driven ones, once where it is not said how often", () => {
    // Of 261 driven days the 131st: the first of the 27th week.
    const days = daysOfYear({ usualDay_km: 30, longestDay_km: 80, year: { ...year, daysAWeek: 5 } });
    expect(days.flatMap(({ kind }, day) => (kind === "longest" ? [day] : []))).toEqual([182]);
    expect(days[182].date).toBe("2 Jul");
  });
  it("are all the longest where that comes more often than is driven, and none where it is no longer than the usual", () => {
    expect(count(daysOfYear({ usualDay_km: 30, longestDay_km: 80, longestDaysAYear: 400, year }), "longest")).toBe(261);
    expect(count(daysOfYear({ usualDay_km: 80, longestDay_km: 80, year }), "longest")).toBe(0);
    expect(count(daysOfYear({ usualDay_km: 79, longestDay_km: 80, year }), "longest")).toBe(1);
  });
});
