import { effect, type ReadonlySignal } from "@preact/signals-core";

/** What is calculated within this time does not go grey in between: grey and back again would only flicker. */
export const WAITED_ms = 200;

/**
 * Marks the page with `data-waited` once the last change is so long ago that what is still late may look late. The look of a late figure hangs
 * on this one mark: greying every figure at each key, however soon it is drawn anew, would have the browser paint half the page twice.
 */
export function markWaited(
  page: Pick<HTMLElement, "setAttribute" | "removeAttribute">,
  changed: ReadonlySignal<unknown>,
): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    changed.value;
    page.removeAttribute("data-waited");
    clearTimeout(waiting);
    waiting = setTimeout(() => page.setAttribute("data-waited", ""), WAITED_ms);
  });
}
