/** Rounds with the same factor. */
const ROUNDS = 3;

/**
 * The values under which something is likeliest, near those given: each quantity is multiplied and divided by a factor while that makes it likelier,
 * and when none moves any more it is the turn of the next of the `factors` (a pattern search by the logarithms of the quantities). All must be positive; each
 * stays within its `bounds`.
 */
export function refined<T extends Record<keyof T, number>>(
  start: T,
  bounds: { readonly [Key in keyof T]: readonly [number, number] },
  likelihood: (values: T) => number,
  factors: readonly number[],
): T {
  let best = start;
  let most = likelihood(start);
  const keys = Object.keys(bounds) as (keyof T)[];
  for (const factor of factors) {
    for (let round = 0; round < ROUNDS; round++) {
      const before = best;
      for (const key of keys) {
        const [least, greatest] = bounds[key];
        for (const by of [factor, 1 / factor]) {
          const value = Math.max(least, Math.min(greatest, best[key] * by));
          if (value === best[key]) continue;
          const values = { ...best, [key]: value };
          const found = likelihood(values);
          if (found <= most) continue;
          [best, most] = [values, found];
          break;
        }
      }
      if (best === before) break;
    }
  }
  return best;
}
