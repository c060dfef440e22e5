import { nice } from "d3-array";

/** From `low` to `high`, widened to round numbers and never empty, with zero inside where `withZero` asks for it. */
export function domain(low: number, high: number, withZero = false): [number, number] {
  let from = Number.isFinite(low) ? low : 0;
  let to = Number.isFinite(high) ? high : 0;
  if (withZero) {
    from = Math.min(from, 0);
    to = Math.max(to, 0);
  }
  if (to - from <= Math.abs(to) * 1e-9) {
    const margin = Math.abs(to) * 0.1 || 1;
    if (!withZero || from < 0) from -= margin;
    if (!withZero || to >= 0) to += margin;
  }
  const [niceFrom, niceTo] = nice(from, to, 5);
  return [niceFrom, niceTo];
}

/** Lowest and highest of the first `length` values; 0 and 0 where there is none. */
export function reach(values: ArrayLike<number>, length: number): [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < length; i++) {
    const value = values[i] as number;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return length > 0 ? [low, high] : [0, 0];
}
