import * as z from "zod";

/** A time of day as it is read from a clock of 24 hours: 23:30. */
export const Clock = z.string().regex(/^([01]?\d|2[0-3]):[0-5]\d$/, "a time of day from 0:00 to 23:59 wanted");

/** Hours from one time of day to another; an end that is not later than the beginning is the next day's. */
export const Hours = z.strictObject({ from: Clock, to: Clock });
export type Hours = z.infer<typeof Hours>;
