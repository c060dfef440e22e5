import type { Job } from "../../../shared/job/job.ts";

/** The three states of pack and weather in which a day is judged, the kindest first. */
export const CONDITIONS = ["new", "winter", "tenYearsWinter"] as const;
export type ConditionId = (typeof CONDITIONS)[number];

/** How each is named on the page. */
export const conditionNames: Readonly<Record<ConditionId, string>> = {
  new: "new",
  winter: "winter",
  tenYearsWinter: "ten years, winter",
};

/** One value for each condition. */
export type ByCondition<T> = Readonly<Record<ConditionId, T>>;

/** What `make` gives for each condition. */
export function byCondition<T>(make: (condition: ConditionId) => T): ByCondition<T> {
  return { new: make("new"), winter: make("winter"), tenYearsWinter: make("tenYearsWinter") };
}

/**
 * Range in a condition over the range in today's weather with a new pack: a winter's day takes `winter_ratio` times the energy, an old
 * pack holds `aged_frac` of its charge. Common practice, no source; what a range is multiplied by until each condition is driven.
 */
export function rangeFactor(condition: ConditionId, { winter_ratio, aged_frac }: Job["allowance"]): number {
  if (condition === "new") return 1;
  return (condition === "winter" ? 1 : aged_frac) / winter_ratio;
}
