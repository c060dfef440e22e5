import { overYears, type RunningCosts, runningOver } from "./running.ts";
import { less, type Span, sum } from "./span.ts";

/** A way to go on: what is paid at once, and what the car then costs to keep. */
export interface Way {
  readonly price: Span;
  readonly running: RunningCosts;
}

/** When the dearer way has paid for itself, in years; absent where it has not within the years looked ahead. */
export interface Payback {
  readonly value_years?: number;
  /** Where everything turns out well for it, and where everything turns out badly. */
  readonly early_years?: number;
  readonly late_years?: number;
}

/** All money spent by the end of each year, the price at its beginning as year 0, as it is worth today. */
export function spentBy(way: Way, distance_km: number, years: number, discount_frac: number): readonly Span[] {
  return Array.from({ length: years + 1 }, (_, year) =>
    sum(way.price, runningOver(way.running, distance_km, year, discount_frac)),
  );
}

/** When one way has cost no more than another and goes on so to the end of the years: straight lines within a year. */
export function paybackOf(one: readonly Span[], other: readonly Span[]): Payback {
  const more = one.map((spent, year) => less(spent, other[year]));
  const [value, early, late] = (["value", "low", "high"] as const).map((end) =>
    paidBack_years(more.map((at) => at[end])),
  );
  return {
    ...(value !== undefined && { value_years: value }),
    ...(early !== undefined && { early_years: early }),
    ...(late !== undefined && { late_years: late }),
  };
}

function paidBack_years(more: readonly number[]): number | undefined {
  const last = more.findLastIndex((at) => at > 0);
  if (last === more.length - 1) return undefined;
  if (last < 0) return 0;
  return last + more[last] / (more[last] - more[last + 1]);
}

/**
 * The yearly distance from which one way costs no more than the other by the end of the years, in kilometres: what they cost over
 * those years is a straight line over the distance. 0 where it costs no more standing still; nothing where each kilometre costs as much or more.
 */
export function paysFrom_km(one: Way, other: Way, years: number, discount_frac: number): number | undefined {
  const [mine, theirs] = [one, other].map(({ running }) => overYears(running, years, discount_frac));
  const standing = (way: Way, rest: number) => way.price.value + way.running.upkeep.value * rest;
  const perKm = (way: Way, { energy, rest }: ReturnType<typeof overYears>) =>
    energy.value + way.running.chargePerKm * rest;
  const extra = standing(one, mine.rest) - standing(other, theirs.rest);
  const saved = perKm(other, theirs) - perKm(one, mine);
  if (saved <= 0) return extra <= 0 && saved === 0 ? 0 : undefined;
  return Math.max(0, extra / saved);
}
