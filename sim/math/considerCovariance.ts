/** What the values that were not estimated do to those that were. */
export interface Considered {
  /** Covariance of the estimated, row by row, with what the others may be off. */
  readonly whole: Float64Array;
  /** `moves[o][k]`: by how much estimated value k moves for each that other value o is off by. */
  readonly moves: readonly (readonly number[])[];
}

/**
 * Covariance of estimated values where others, known only to some spread, were left out of the fit: a consider covariance
 * [Bierman1977, ch. 8].
 *
 *   S = -P JᵀK,   P + S C Sᵀ
 *
 * `slopes` are the whitened columns of J, `byFit` is P, `others` has the whitened columns of K with their spreads, the roots of C's
 * diagonal. `own` is what stands in place of P in the sum, where it is wider than P.
 */
export function considerCovariance(
  slopes: readonly Float64Array[],
  byFit: Float64Array,
  others: readonly { readonly slope: Float64Array; readonly spread: number }[],
  own = byFit,
): Considered {
  const n = slopes.length;
  const whole = own.slice();
  const moves = others.map(({ slope: theirs, spread }) => {
    const pulled = slopes.map((each) => each.reduce((sum, slope, i) => sum + slope * theirs[i], 0));
    const moved = Array.from(
      { length: n },
      (_, k) => -pulled.reduce((sum, value, l) => sum + byFit[k * n + l] * value, 0),
    );
    for (let k = 0; k < n; k++) for (let l = 0; l < n; l++) whole[k * n + l] += moved[k] * moved[l] * spread * spread;
    return moved;
  });
  return { whole, moves };
}
