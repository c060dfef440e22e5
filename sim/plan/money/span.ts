import type { Amount } from "../../../shared/job/schema/costs.ts";

/** An amount as far as it is known: money, or whatever else is added up with it. The value lies between the ends. */
export interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export const NOTHING: Span = { value: 0, low: 0, high: 0 };

/** An amount known exactly. */
export function exactly(value: number): Span {
  return { value, low: value, high: value };
}

/** From one end to the other, the middle as the value; one figure where there is no higher end. */
export function between(low: number, high = low): Span {
  return { low, high, value: (low + high) / 2 };
}

/** A typed amount, the middle of its ends as the value. */
export function spanOf({ low, high }: Amount): Span {
  return between(low, high);
}

/** All of them together: every one at its low end, at its value, at its high end. */
export function sum(...spans: readonly Span[]): Span {
  return spans.reduce(
    (all, { value, low, high }) => ({ value: all.value + value, low: all.low + low, high: all.high + high }),
    NOTHING,
  );
}

/** One less another that is not tied to it: as little as the low end less the other's high end, as much as the high less the low. */
export function less(one: Span, other: Span): Span {
  return { value: one.value - other.value, low: one.low - other.high, high: one.high - other.low };
}

/** Two amounts multiplied end by end; neither may be negative. */
export function product(one: Span, other: Span): Span {
  return { value: one.value * other.value, low: one.low * other.low, high: one.high * other.high };
}

/** So many times the amount; `factor` may not be negative. */
export function times({ value, low, high }: Span, factor: number): Span {
  return { value: value * factor, low: low * factor, high: high * factor };
}
