/** Settings of a property test: so many cases, the same ones every time; the first that fails is shown as it is, since shrinking whole jobs takes minutes. */
export function fixedly(numRuns: number): {
  readonly numRuns: number;
  readonly seed: number;
  readonly endOnFailure: true;
} {
  return { numRuns, seed: 19_640_815, endOnFailure: true };
}
