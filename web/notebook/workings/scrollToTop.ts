/** How long a page may take to draw what was opened. Assumed. */
const DRAWN_ms = 4000;
/** What a reader does who goes elsewhere meanwhile. */
const MOVES = ["wheel", "touchmove", "keydown", "pointerdown"] as const;

/**
 * Brings an element to the top of the window, and keeps it there while what was opened is still being drawn: a page that is too short yet
 * cannot go so far. A reader who moves meanwhile is left where he goes.
 */
export function scrollToTop(element: HTMLElement): void {
  element.scrollIntoView();
  const growing = new ResizeObserver(() => element.scrollIntoView());
  const end = () => {
    growing.disconnect();
    clearTimeout(timer);
    for (const move of MOVES) removeEventListener(move, end);
  };
  const timer = setTimeout(end, DRAWN_ms);
  for (const move of MOVES) addEventListener(move, end, { passive: true });
  growing.observe(document.documentElement);
}
