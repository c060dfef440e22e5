import * as z from "zod";
import { above0, between } from "./number.ts";

const MONTHS = 12;
/** Days of a list: a year's and a month more. */
export const DAYS_MOST = 400;

/** The year that the packs are judged over: how cold it gets, and on which days the car is driven. */
export const Year = z.strictObject({
  /** Mean temperature of each month's days, January first. */
  months_degC: z.array(between(-40, 45)).length(MONTHS),
  /** How far single days lie from their month, as a standard deviation. */
  scatter_K: between(0, 15).default(3),
  daysAWeek: z.int().min(1).max(7).default(5),
  /** Weeks in which the car stands. */
  holidayWeeks: z.int().min(0).max(51).default(4),
  /** How far driven days lie from the usual one at most, as a share of it. */
  spread_frac: between(0, 0.9).default(0),
  /**
   * Lengths of driven days as a log showed them, in any order: the driven days are drawn from them, in place of the spread. They give the
   * proportions; the usual day is their middle one.
   */
  daysDriven_km: z.array(above0(2000)).min(1).max(DAYS_MOST).optional(),
});
export type Year = z.infer<typeof Year>;
