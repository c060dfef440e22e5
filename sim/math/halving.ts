/**
 * The first whole number from `low` to `high` at which a condition holds that stays true from there on, by halving; `high` where it
 * holds at none before it, which is not tried.
 */
export function firstWhere(low: number, high: number, holds: (at: number) => boolean): number {
  let from = low;
  let to = high;
  while (from < to) {
    const middle = (from + to) >> 1;
    if (holds(middle)) to = middle;
    else from = middle + 1;
  }
  return to;
}
