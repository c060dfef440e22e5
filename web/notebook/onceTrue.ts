import { effect } from "@preact/signals-core";

/** Longer than anything that is waited for takes; whoever waits then goes on without it. */
const MOST_ms = 10_000;

/** Is over once what is asked of signals is so, or after ten seconds. */
export function onceTrue(isSo: () => boolean): Promise<void> {
  return new Promise((resolve) => {
    const limit = setTimeout(resolve, MOST_ms);
    const stop = effect(() => {
      if (!isSo()) return;
      queueMicrotask(() => {
        clearTimeout(limit);
        stop();
        resolve();
      });
    });
  });
}
