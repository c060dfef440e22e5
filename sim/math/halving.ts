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

/** More halvings of an interval than the digits of a number need. */
const HALVINGS = 60;

/**
 * The greatest number from `low` to `high` at which a condition holds that is false from some number on, by halving; `low` where it
 * holds nowhere.
 */
export function greatestWhere(low: number, high: number, holds: (at: number) => boolean): number {
  if (!holds(low)) return low;
  if (holds(high)) return high;
  let yes = low;
  let no = high;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = 0.5 * (yes + no);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
