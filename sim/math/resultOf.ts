/** The result of work that yields the share done, run to its end at once. */
export function resultOf<T>(steps: Generator<number, T, void>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
