/**
 * The values under which something is likeliest: one quantity after another goes to the best of its values, until none moves. A third of
 * the runs of trying all, and the same answer where the quantities hardly trade against each other.
 */
export function climbed<T extends Record<keyof T, number>>(
  start: T,
  tried: { readonly [Key in keyof T]: readonly number[] },
  likelihood: (values: T) => number,
): T {
  let best = start;
  let most = likelihood(start);
  for (let round = 0; round < 2; round++) {
    const before = best;
    for (const key of Object.keys(tried) as (keyof T)[]) {
      const from = best;
      for (const value of tried[key]) {
        if (value === from[key]) continue;
        const values = { ...from, [key]: value };
        const found = likelihood(values);
        if (found > most) [best, most] = [values, found];
      }
    }
    if (best === before) break;
  }
  return best;
}
