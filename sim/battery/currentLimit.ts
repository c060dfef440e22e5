/** How much current may pass without end, and how much more for a while. */
export interface CurrentLimit {
  readonly continuous_A: number;
  readonly peak_A: number;
  /** How much (I² − continuous²)·t the peak may use up. */
  readonly budget_A2s: number;
}

/** The limit of so many strings in parallel, each of which stands its peak for `peak_s`. */
export function currentLimit(
  string: { readonly continuous_A: number; readonly peak_A: number; readonly peak_s: number },
  strings: number,
): CurrentLimit {
  const continuous_A = string.continuous_A * strings;
  const peak_A = string.peak_A * strings;
  return { continuous_A, peak_A, budget_A2s: (peak_A * peak_A - continuous_A * continuous_A) * string.peak_s };
}

/**
 * Most current over an interval, in amperes: what leaves the peak budget unspent at its end, at most the peak.
 *
 *   I² = continuous² + (budget − used) / dt
 *
 * Assumed: modules' makers print currents for durations, not the law between them; this one keeps to both figures.
 */
export function currentWithin_A(limit: CurrentLimit, used_A2s: number, dt_s: number): number {
  const { continuous_A, peak_A } = limit;
  const beyond_A2 = Math.max(0, limit.budget_A2s - used_A2s) / dt_s;
  const squared_A2 = continuous_A * continuous_A + beyond_A2;
  return squared_A2 >= peak_A * peak_A ? peak_A : Math.sqrt(squared_A2);
}

/** Peak budget used up after a time at a current; below the continuous one it recovers. */
export function budgetUsed_A2s(limit: CurrentLimit, before_A2s: number, current_A: number, dt_s: number): number {
  const after_A2s = before_A2s + (current_A * current_A - limit.continuous_A * limit.continuous_A) * dt_s;
  return Math.min(limit.budget_A2s, Math.max(0, after_A2s));
}
