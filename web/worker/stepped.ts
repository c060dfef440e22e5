import type { Steps } from "../../sim/index.ts";

/** How long a slice may keep the worker from hearing a cancel. */
const SLICE_ms = 50;

/**
 * Runs work in slices to its end, with room between them for messages to come in. Returns nothing where
 * `isCancelled` answered true in between.
 */
export async function stepped<T>(
  steps: Steps<T>,
  onProgress: (share_frac: number) => void,
  isCancelled: () => boolean,
  slice_ms = SLICE_ms,
): Promise<{ readonly value: T } | undefined> {
  let since_ms = Date.now();
  for (;;) {
    const next = steps.next();
    if (next.done) return isCancelled() ? undefined : { value: next.value };
    if (Date.now() - since_ms < slice_ms) continue;
    onProgress(next.value);
    await new Promise((resolve) => setTimeout(resolve));
    if (isCancelled()) return undefined;
    since_ms = Date.now();
  }
}
