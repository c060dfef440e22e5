import { type ReadonlySignal, signal } from "@preact/signals-core";
import type { Turns } from "./turns.ts";

/** What a figure is drawn for on paper: the width of an A4 page between its margins. */
const PAPER_px = 680;

/**
 * Width that figures are drawn for, following that of `body` in steps, so that a window being dragged draws few times. On
 * paper it is the paper's, and everything is drawn before the printer asks for it: a figure that changed its height once
 * the pages are counted would push the last of them out. (The print medium is announced too late for that.)
 */
export function watchWidth(body: HTMLElement, turns: Turns): ReadonlySignal<number> {
  const step_px = 20;
  let isOnPaper = false;
  const stepped = () =>
    isOnPaper ? PAPER_px : Math.max(320, Math.min(1200, Math.floor(body.clientWidth / step_px) * step_px));
  const width_px = signal(stepped());
  const follow = () => {
    width_px.value = stepped();
  };
  // A frame later: what is drawn changes the size again, which an observer may not do while it is asked.
  new ResizeObserver(() => requestAnimationFrame(follow)).observe(body);
  const lay = (onPaper: boolean) => {
    isOnPaper = onPaper;
    follow();
    if (onPaper) turns.finish();
  };
  addEventListener("beforeprint", () => lay(true));
  addEventListener("afterprint", () => lay(false));
  return width_px;
}
