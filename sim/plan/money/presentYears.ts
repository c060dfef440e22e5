/**
 * How many of its first years' payments a yearly payment comes to over so many years: paid at the end of each year, growing by
 * `drift_frac` from one to the next, each worth less by `discount_frac` for every year that it lies ahead.
 *
 *   F = Σ (1 + g)^(k−1) / (1 + r)^k, k = 1 … n      (closed form: (1 − ((1 + g)/(1 + r))^n) / (r − g), or n / (1 + r) where g = r)
 *
 * Added up and not by the closed form, which divides nought by nought where drift and discount are the same.
 */
export function presentYears(years: number, drift_frac: number, discount_frac: number): number {
  let payment = 1 / (1 + discount_frac);
  let all = 0;
  for (let year = 1; year <= years; year++) {
    all += payment;
    payment *= (1 + drift_frac) / (1 + discount_frac);
  }
  return all;
}
