import type { Job } from "../../../shared/job/job.ts";
import type { Candidate } from "../driveReport.ts";

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
 * Range in a condition over the range in today's weather with a new pack where nothing is driven: a winter's day takes `winter_ratio` times
 * the energy, an old pack holds `aged_frac` of its charge. Common practice, no source.
 */
function rangeFactor(condition: Exclude<ConditionId, "new">, { winter_ratio, aged_frac }: Job["allowance"]): number {
  return (condition === "winter" ? 1 : aged_frac) / winter_ratio;
}

/** Range of a pack in a condition, in kilometres: as driven in it, or by the factors of the allowance where a job knows no more. */
export function rangeIn_km(
  condition: ConditionId,
  allowance: Job["allowance"],
  { range_km, conditions }: Pick<Candidate, "range_km" | "conditions">,
): number {
  if (condition === "new") return range_km;
  return conditions?.[condition]?.range_km ?? range_km * rangeFactor(condition, allowance);
}
