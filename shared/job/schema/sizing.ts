import * as z from "zod";
import { above0, between } from "./number.ts";

/** What the smallest pack that will do is sought for: the day, the state of pack and weather, how sure of it, and how far is looked. */
export const Sizing = z.strictObject({
  day: z.enum(["usual", "longest"]).default("usual"),
  condition: z.enum(["new", "winter", "tenYearsWinter"]).default("tenYearsWinter"),
  /** What must be left on coming home; none where left out. */
  reserve_km: between(0, 1000).optional(),
  /** With the values as taken, or with all that they may be. */
  sure: z.enum(["asTaken", "wholeBand"]).default("asTaken"),
  /** No pack of more modules is looked at; twice those of the largest pack of the job, and at least 24, where left out. */
  modulesMost: z.int().min(1).max(400).optional(),
  /** No heavier pack, boxes and all, is looked at. */
  packMost_kg: above0(5000).optional(),
});
export type Sizing = z.infer<typeof Sizing>;
