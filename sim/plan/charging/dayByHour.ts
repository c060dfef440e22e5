import { clock_h, isWithin } from "../../../shared/job/hoursOfDay.ts";
import type { Hours } from "../../../shared/job/schema/clock.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import { S_PER_H } from "../../../shared/units.ts";
import { straightAt } from "../../math/straightAt.ts";
import type { DayRefill } from "./chargeRow.ts";

/** A usual day of one pack, from the hour of leaving to the same hour of the next day. */
export interface DayByHour {
  /** Since the midnight before, rising; beyond 24 from the next midnight on. */
  readonly hour_h: readonly number[];
  readonly soc_frac: readonly number[];
  readonly leaves_h: number;
  readonly home_h: number;
  /** State of charge on coming home. */
  readonly home_frac: number;
  /** Nothing where the charge does not begin before the car leaves again. */
  readonly chargesFrom_h?: number;
  /** The charge is over before the car leaves again. */
  readonly isFull: boolean;
}

/** When a car leaves and is home again where its supply names no hours. Assumed. */
const WORKING_DAY: Hours = { from: "18:00", to: "8:00" };
const DAY_h = 24;

/**
 * The state of charge of a usual day by the clock: the car leaves when its hours at the supply end, drives half of the day's road, stands,
 * drives the other half so that it is home when the hours begin (later, where the driving takes longer than that), and is plugged in; the
 * charge begins then, or with the cheap hours. `driving_h` is at most a day. The pack falls evenly while it is driven, since of a day only the end is known.
 */
export function dayByHour(supply: Supply, refill: DayRefill, full_frac: number, driving_h: number): DayByHour {
  const stands = supply.hours ?? WORKING_DAY;
  const leaves_h = clock_h(stands.to);
  const home_h = Math.max(after_h(leaves_h, clock_h(stands.from)), leaves_h + driving_h);
  const nextDay_h = leaves_h + DAY_h;
  const half_h = driving_h / 2;
  const half_frac = (full_frac + refill.from_frac) / 2;
  const from_h = supply.cheap ? firstWithin_h(supply.cheap, home_h) : home_h;
  const isCharged = from_h < nextDay_h;
  const { course, from_frac } = refill;
  const charged_h = isCharged ? course.time_s.map((time_s) => from_h + time_s / S_PER_H) : [];
  const before_h = charged_h.filter((hour) => hour < nextDay_h);
  const end_frac = isCharged ? straightAt(charged_h, course.soc_frac, nextDay_h) : from_frac;
  return {
    hour_h: [leaves_h, leaves_h + half_h, home_h - half_h, home_h, ...before_h, nextDay_h],
    soc_frac: [full_frac, half_frac, half_frac, from_frac, ...course.soc_frac.slice(0, before_h.length), end_frac],
    leaves_h,
    home_h,
    home_frac: from_frac,
    ...(isCharged && { chargesFrom_h: from_h }),
    isFull: isCharged && charged_h[charged_h.length - 1] <= nextDay_h,
  };
}

/** A time of day as hours that are not before others. */
function after_h(from_h: number, clock: number): number {
  return clock < from_h ? clock + DAY_h : clock;
}

/** The first hour from one on that lies within hours of the day. */
function firstWithin_h(span: Hours, from_h: number): number {
  const begins_h = clock_h(span.from);
  return isWithin(span, from_h % DAY_h) ? from_h : after_h(from_h, begins_h + DAY_h * Math.floor(from_h / DAY_h));
}
