/** Work done a slice at a time: each yield is the share done so far (0 to 1), the return value is the result. */
export type Steps<T> = Generator<number, T, void>;

/** Thrown out of `runSteps` when the caller asked to stop. Not a fault of the input, so not an `InputError`. */
export class CancelledError extends Error {
  constructor() {
    super("cancelled");
    this.name = "CancelledError";
  }
}

/**
 * The result of work done in slices, run to its end at once. Progress is called with the share done after each slice;
 * where `isCancelled` answers true between two slices, the work is given up with a `CancelledError`.
 * A worker that must stay open to messages steps the generator itself and lets its messages in between slices.
 */
export function runSteps<T>(
  steps: Steps<T>,
  progress?: (fraction_frac: number) => void,
  isCancelled?: () => boolean,
): T {
  for (;;) {
    if (isCancelled?.()) {
      throw new CancelledError();
    }
    const next = steps.next();
    if (next.done) {
      progress?.(1);
      return next.value;
    }
    progress?.(next.value);
  }
}
