/** The two ends of a bracket around a root, reused from call to call. */
export interface Bracket {
  /** Where the function is not above zero. */
  low: number;
  /** Where the function is above zero. */
  high: number;
}

/**
 * Narrows a bracket around a sign change of f to `tolerance`: afterwards f(low) <= 0 < f(high), whichever of the two is larger.
 * Takes f at both ends as given, so that nothing is worked out twice, and f's surroundings as an argument, so that no function
 * is made for the call: it allocates nothing.
 *
 * Inverse quadratic interpolation where it can be trusted, bisection elsewhere  [Chandrupatla1997, algorithm].
 * f need not be continuous; it then narrows to the jump. Ends after 200 evaluations at the latest.
 */
export function narrowBracket<C>(
  f: (context: C, x: number) => number,
  context: C,
  bracket: Bracket,
  fLow: number,
  fHigh: number,
  tolerance: number,
): void {
  let a = bracket.high;
  let fa = fHigh;
  let b = bracket.low;
  let fb = fLow;
  let c = a;
  let fc = fa;
  let t = 0.5;
  for (let round = 0; round < 200; round++) {
    const x = a + t * (b - a);
    const fx = f(context, x);
    if (fx > 0 === fa > 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const share = (0.5 * tolerance) / Math.abs(b - a);
    if (!(share < 0.5)) break;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    t =
      phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
        ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
        : 0.5;
    t = Math.min(1 - share, Math.max(share, t));
  }
  if (fa > 0) {
    bracket.high = a;
    bracket.low = b;
  } else {
    bracket.low = a;
    bracket.high = b;
  }
}
