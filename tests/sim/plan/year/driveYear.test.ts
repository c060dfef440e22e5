import { expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { M_PER_KM } from "../../../../shared/units.ts";
import { ageOf } from "../../../../sim/plan/conditions/condition.ts";
import { driveConditions } from "../../../../sim/plan/conditions/driveConditions.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { rangeOn } from "../../../../sim/plan/going/range.ts";
import { daysOfYear } from "../../../../sim/plan/year/days.ts";
import { yearOf, yearRanges } from "../../../../sim/plan/year/driveYear.ts";
import { weatherAt } from "../../../../sim/plan/year/weatherAt.ts";
import { prepareIn } from "../../../../sim/step/prepare.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const heat = { kind: "thermostat", power_kW: 1.5, cabin_degC: 18, capacity_kJpK: 45, loss_WpK: 60, trip_km: 8 };
const whole = inventedJob();
const job = readJob({
  ...whole,
  usualDay_km: 20,
  longestDay_km: 400,
  longestDaysAYear: 2,
  packs: whole.packs.slice(0, 1),
  conditions: { winter: { temperature_degC: -3, heat, usable_frac: 0.95 }, old: { resistance_ratio: 1.3 } },
  year: { months_degC: [-2, 0, 4, 9, 14, 18, 20, 19, 15, 10, 4, 0] },
});
const [pack] = job.packs;
const trace = roadTrace({ kind: "cycle", id: "ece-15", title: "urban", cycle: "ece-15" }, cycleTexts);
const ranges = yearRanges(job, trace);
const report = yearOf(job, ranges);

it("is by nine temperatures and their corners what driving every day by itself is, within one and a half percent", () => {
  // Brute force: every fourteenth day, and those with the least and the most left, driven at their own temperatures.
  const [fresh, old] = report.packs;
  const ordered = fresh.evenings_km.map((left_km, day) => ({ left_km, day })).sort((a, b) => a.left_km - b.left_km);
  const tried = [...Array.from({ length: 27 }, (_, k) => 14 * k), ordered[0].day, ordered[364].day];
  for (const day of tried) {
    const { temperature_degC, distance_km } = report.days[day];
    for (const [evenings, age] of [
      [fresh, {}],
      [old, { age: ageOf(job) }],
    ] as const) {
      const model = prepareIn(job, pack, { ...weatherAt(job, temperature_degC), ...age });
      const left_km = rangeOn(model, trace).distance_m / M_PER_KM - distance_km;
      expect(Math.abs(evenings.evenings_km[day] - left_km)).toBeLessThan(0.015 * (left_km + distance_km));
    }
  }
  expect(tried).toHaveLength(29);
  expect(report.confirmedDays).toBe(6);
  expect(report.largestError_km).toBeLessThan(0.015 * Math.max(...fresh.evenings_km));
});

it("meets the job's own weather and its winter at their temperatures", () => {
  const range_km = (at_degC: number) =>
    rangeOn(prepareIn(job, pack, weatherAt(job, at_degC)), trace).distance_m / M_PER_KM;
  const [{ winter }] = driveConditions(job, trace);
  expect(range_km(-3)).toBeCloseTo(winter?.range_km ?? 0, 9);
  expect(range_km(job.environment.temperature_degC)).toBeCloseTo(
    rangeOn(prepareIn(job, pack, {}), trace).distance_m / M_PER_KM,
    9,
  );
});

it("names the days that fail, the longest among them, and leaves the whole range on a day on which the car stands", () => {
  const [{ failingDays, evenings_km, age_years }] = report.packs;
  expect(age_years).toBe(0);
  expect(failingDays.filter(({ kind }) => kind === "longest")).toHaveLength(2);
  for (const { short_km, kind } of failingDays) expect(short_km).toBeGreaterThan(kind === "longest" ? 0 : -1);
  const standing = report.days.findIndex(({ kind }) => kind === "off");
  expect(evenings_km[standing]).toBeGreaterThan(0);
});

it("follows the factors of a job that knows winter by them", () => {
  const { conditions: _conditions, ...byFactor } = job;
  const { year: _year, ...plain } = byFactor;
  const driven = yearRanges(plain, trace);
  const [fresh, old] = yearOf(plain, driven).packs;
  const days = daysOfYear(plain);
  const warm = days.findIndex(({ temperature_degC, kind }) => temperature_degC > 21 && kind === "usual");
  const own_km = rangeOn(prepareIn(byFactor, pack, {}), trace).distance_m / M_PER_KM;
  expect(fresh.evenings_km[warm]).toBeCloseTo(own_km - 20, 6);
  expect(old.evenings_km[warm]).toBeCloseTo(own_km * job.allowance.aged_frac - 20, 6);
  // At 0 °C and below winter is whole: the range over its factor.
  const cold = days.findIndex(({ temperature_degC, kind }) => temperature_degC < -0.5 && kind === "usual");
  expect(days[cold].temperature_degC).toBeLessThan(-0.5);
  const winter_km = own_km / job.allowance.winter_ratio;
  expect(fresh.evenings_km[cold]).toBeCloseTo(winter_km - 20, 6);
  expect(old.evenings_km[cold]).toBeCloseTo(winter_km * job.allowance.aged_frac - 20, 6);
});

it("ends where it is cancelled", () => {
  expect(yearRanges(job, trace, () => true)).toBeUndefined();
});
