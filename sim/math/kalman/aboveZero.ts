/** Moments of a normal distribution of which only what is above zero is kept, and the share of it that is. */
export interface AboveZero {
  share: number;
  mean: number;
  variance: number;
}

/**
 * Fills the moments of N(mean, variance) cut off below zero: with a = -mean / s, density f and r = f(a) / (1 - F(a)) of the standard
 * normal, mean + s r and variance (1 + a r - r^2) [JohnsonKotz1994, ch. 13, sec. 10.1].
 */
export function aboveZero(mean: number, variance: number, fill: AboveZero): void {
  const s = Math.sqrt(variance);
  const a = -mean / s;
  const share = upperTail(a);
  fill.share = share;
  if (share < 1e-8) {
    // Far below zero what is left is a thin exponential at zero.
    fill.mean = s / Math.max(a, 1);
    fill.variance = fill.mean * fill.mean;
    return;
  }
  const ratio = Math.exp(-0.5 * a * a) / Math.sqrt(2 * Math.PI) / share;
  fill.mean = mean + s * ratio;
  fill.variance = Math.max(1e-6 * variance, variance * (1 + a * ratio - ratio * ratio));
}

/** Share of the standard normal distribution above x, to 1.2e-7 relative [Press2007, sec. 6.2.2, erfccheb as fitted by a polynomial]. */
export function upperTail(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 2 / (2 + z);
  const series =
    -1.26551223 +
    t *
      (1.00002368 +
        t *
          (0.37409196 +
            t *
              (0.09678418 +
                t *
                  (-0.18628806 +
                    t * (0.27886807 + t * (-1.13520398 + t * (1.48851587 + t * (-0.82215223 + t * 0.17087277))))))));
  const tail = 0.5 * t * Math.exp(-z * z + series);
  return x >= 0 ? tail : 1 - tail;
}
