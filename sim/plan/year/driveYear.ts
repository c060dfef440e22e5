import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { straightAt } from "../../math/straightAt.ts";
import { type DrivenIn, prepareIn } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import { ageOf } from "../conditions/condition.ts";
import { rangeFrom_km } from "../going/rangeFrom.ts";
import { type DayOfYear, daysOfYear, type YearJob } from "./days.ts";
import { weatherAt, winterShare } from "./weatherAt.ts";
import {
  AGES_years,
  type FailingDay,
  type PackRanges,
  type PackYear,
  type YearRanges,
  type YearReport,
} from "./yearReport.ts";

/** Temperatures at which a year is driven, its ends among them. */
const TEMPERATURES = 9;
/** Days driven at their own temperature to confirm the others, for each pack and age. */
const CONFIRMED = 3;

/**
 * How far each pack of a job goes on one charge, new and at ten years, over the temperatures of its year: driven at nine of them, and at
 * those where the law of `weatherAt` has its corners; what lies between is on straight lines. Some days are driven to confirm that, in the
 * middle between two: what they differ by is in the answer. No usual day is in it, so that a change of that drives nothing anew.
 * `isCancelled` is asked between drives, and nothing is returned then.
 */
export function yearRanges(job: Job, trace: Trace): YearRanges;
export function yearRanges(job: Job, trace: Trace, isCancelled: () => boolean): YearRanges | undefined;
export function yearRanges(job: Job, trace: Trace, isCancelled: () => boolean = () => false): YearRanges | undefined {
  const days = daysOfYear(job);
  const driven_degC = temperatures(job, days);
  let largestError_km = 0;
  let confirmedDays = 0;
  const packs: PackRanges[] = [];
  for (const pack of job.packs) {
    for (const age_years of AGES_years) {
      const ranges_km: number[] = [];
      for (const at_degC of driven_degC) {
        if (isCancelled()) return undefined;
        ranges_km.push(range_km(job, pack, trace, at_degC, age_years));
      }
      for (const at_degC of toConfirm(driven_degC, days)) {
        if (isCancelled()) return undefined;
        const error_km = range_km(job, pack, trace, at_degC, age_years) - straightAt(driven_degC, ranges_km, at_degC);
        largestError_km = Math.max(largestError_km, Math.abs(error_km));
        confirmedDays += 1;
      }
      packs.push({ name: pack.name, age_years, ranges_km });
    }
  }
  return { driven_degC, largestError_km, confirmedDays, packs };
}

/**
 * Every evening of a year: what is left of a day is what one charge goes at its temperature, less what is driven. Every day begins charged
 * to the ceiling.
 */
export function yearOf(job: YearJob, { packs, ...driven }: YearRanges): YearReport {
  const days = daysOfYear(job);
  return {
    ...driven,
    days,
    packs: packs.map(({ name, age_years, ranges_km }) =>
      packYear(name, age_years, days, (at_degC) => straightAt(driven.driven_degC, ranges_km, at_degC)),
    ),
  };
}

/** A pack's evenings from its range by temperature. */
function packYear(
  name: string,
  age_years: number,
  days: readonly DayOfYear[],
  range_km: (at_degC: number) => number,
): PackYear {
  const evenings_km = days.map(({ temperature_degC, distance_km }) => range_km(temperature_degC) - distance_km);
  const failingDays = days.flatMap(({ date, distance_km, temperature_degC, kind }, day): FailingDay[] =>
    evenings_km[day] < 0 ? [{ date, distance_km, temperature_degC, kind, short_km: -evenings_km[day] }] : [],
  );
  return { name, age_years, evenings_km, failingDays };
}

/** Rising: the year's ends, steps between them, where winter begins and is reached, and where cells begin to take a charge. */
function temperatures(job: Job, days: readonly DayOfYear[]): number[] {
  const all = days.map(({ temperature_degC }) => temperature_degC);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const steps = Array.from({ length: TEMPERATURES }, (_, k) => least + ((most - least) * k) / (TEMPERATURES - 1));
  const { none_degC, full_degC } = job.module.coldCharge;
  // Just above the temperature at which cells take no charge, braking begins to give something back: the steepest piece of all.
  const steep_degC = [0, 1, 3].map((above_K) => none_degC + above_K);
  const corners = [
    job.environment.temperature_degC,
    job.conditions?.winter?.temperature_degC ?? least,
    ...steep_degC,
    full_degC,
  ];
  const within = corners.filter((corner) => corner > least && corner < most);
  return [...new Set([...steps, ...within])].sort((a, b) => a - b);
}

/** Of the days' temperatures, those nearest to the middle of three gaps: the coldest, the middle and the warmest one. */
function toConfirm(driven_degC: readonly number[], days: readonly DayOfYear[]): number[] {
  if (driven_degC.length < 2) return [];
  return Array.from({ length: CONFIRMED }, (_, k) => {
    const gap = Math.round((k * (driven_degC.length - 2)) / (CONFIRMED - 1));
    const middle_degC = (driven_degC[gap] + driven_degC[gap + 1]) / 2;
    return days.reduce(
      (nearest, { temperature_degC }) =>
        Math.abs(temperature_degC - middle_degC) < Math.abs(nearest - middle_degC) ? temperature_degC : nearest,
      days[0].temperature_degC,
    );
  });
}

/** One pack driven on a day of a temperature until it is empty; by the factors of the allowance where the job knows winter by them. */
function range_km(job: Job, pack: Pack, trace: Trace, temperature_degC: number, age_years: number): number {
  const isOld = age_years > 0;
  const isDriven = job.conditions?.winter !== undefined;
  const condition: DrivenIn = { ...weatherAt(job, temperature_degC), ...(isOld && isDriven && { age: ageOf(job) }) };
  const km = rangeFrom_km(prepareIn(job, pack, condition), trace);
  if (isDriven) return km;
  const { winter_ratio, aged_frac } = job.allowance;
  return (km * (isOld ? aged_frac : 1)) / (1 + winterShare(job, temperature_degC) * (winter_ratio - 1));
}
