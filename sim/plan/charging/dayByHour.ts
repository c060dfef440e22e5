import { clock_h, type Hours } from "../../../shared/job/schema/clock.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";
import { S_PER_H } from "../../../shared/units.ts";
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
 * charge begins then, or with the cheap hours. The pack falls evenly while it is driven, since of a day only the end is known.
 */
export function dayByHour(supply: Supply, refill: DayRefill, full_frac: number, driving_h: number): DayByHour {
  const stands = supply.hours ?? WORKING_DAY;
  const leaves_h = clock_h(stands.to);
  const home_h = Math.max(after_h(leaves_h, clock_h(stands.from)), leaves_h + driving_h);
  const nextDay_h = leaves_h + DAY_h;
  const half_h = driving_h / 2;
  const half_frac = (full_frac + refill.from_frac) / 2;
  const hour_h = [leaves_h, leaves_h + half_h, home_h - half_h, home_h];
  const soc_frac = [full_frac, half_frac, half_frac, refill.from_frac];
  let isFull = false;
  const from_h = supply.cheap ? firstWithin_h(supply.cheap, home_h) : home_h;
  if (from_h < nextDay_h) {
    isFull = true;
    const { time_s, soc_frac: charged } = refill.course;
    for (let i = 0; i < time_s.length; i++) {
      const at_h = from_h + time_s[i] / S_PER_H;
      if (at_h <= nextDay_h) {
        hour_h.push(at_h);
        soc_frac.push(charged[i]);
        continue;
      }
      isFull = false;
      const before_h = hour_h[hour_h.length - 1];
      const part = (nextDay_h - before_h) / (at_h - before_h);
      hour_h.push(nextDay_h);
      soc_frac.push(soc_frac[soc_frac.length - 1] + part * (charged[i] - soc_frac[soc_frac.length - 1]));
      break;
    }
  }
  if (hour_h[hour_h.length - 1] < nextDay_h) {
    hour_h.push(nextDay_h);
    soc_frac.push(soc_frac[soc_frac.length - 1]);
  }
  return {
    ...{ hour_h, soc_frac, leaves_h, home_h, home_frac: refill.from_frac },
    ...(from_h < nextDay_h && { chargesFrom_h: from_h }),
    isFull,
  };
}

/** A time of day as hours that are not before others. */
function after_h(from_h: number, clock: number): number {
  return clock < from_h ? clock + DAY_h : clock;
}

/** The first hour from one on that lies within hours of the day. */
function firstWithin_h(span: Hours, from_h: number): number {
  const [begins_h, ends_h] = [clock_h(span.from), clock_h(span.to)];
  const clock = from_h % DAY_h;
  const isWithin = begins_h < ends_h ? clock >= begins_h && clock < ends_h : clock >= begins_h || clock < ends_h;
  return isWithin ? from_h : after_h(from_h, begins_h + DAY_h * Math.floor(from_h / DAY_h));
}
