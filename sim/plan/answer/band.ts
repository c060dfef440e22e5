/** A value with what it may be, given what is not known. Low is never above the value, high never below. */
export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What one unknown makes of a value at either end of its own band. */
export interface Ends {
  readonly atLow: number;
  readonly atHigh: number;
}

/**
 * The band of a value from what each unknown alone makes of it. The effects downwards and those upwards each add up as squares do, as
 * the unknowns are assumed to be independent of one another; a side is only what was computed for it, never the other one mirrored:
 *
 *   low = value - √Σ (largest drop of each)²,  high = value + √Σ (largest rise of each)²
 */
export function bandOf(value: number, unknowns: readonly Ends[]): Band {
  const drops = unknowns.map(({ atLow, atHigh }) => Math.max(0, value - Math.min(atLow, atHigh)));
  const rises = unknowns.map(({ atLow, atHigh }) => Math.max(0, Math.max(atLow, atHigh) - value));
  return { value, low: value - Math.hypot(...drops), high: value + Math.hypot(...rises) };
}

/** A band moved by an offset; what is nought but for rounding errors is nought. */
export function shifted({ value, low, high }: Band, offset: number): Band {
  const moved = (number: number) =>
    Math.abs(number + offset) < 1e-9 * Math.max(1, Math.abs(offset)) ? 0 : number + offset;
  return { value: moved(value), low: moved(low), high: moved(high) };
}
