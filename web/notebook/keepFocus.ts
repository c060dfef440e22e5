/** How long after a click what was clicked may still go: a job is deleted by the database, not at once. */
const PATIENCE_ms = 5000;

/** Where a button stood before it was pressed, so that its neighbours are found when it is gone. */
interface Place {
  readonly button: HTMLElement;
  readonly words: string;
  /** Everything around the button, from the nearest out, with its place there among its like and among all buttons. */
  readonly around: readonly { readonly element: HTMLElement; readonly index: number; readonly rank: number }[];
  readonly at_ms: number;
}

/**
 * Gives the keyboard a place to stand where the button that was pressed goes with what it took out: the same button of
 * the next row, or of the last; where no row is left, what adds one; at the least the section or the fold around it.
 */
export function keepFocus(page: HTMLElement): void {
  let pressed: Place | undefined;
  page.addEventListener(
    "click",
    (event) => {
      const button = (event.target as Element).closest<HTMLElement>("button");
      pressed = button ? placeOf(page, button, event.timeStamp) : undefined;
    },
    { capture: true },
  );
  new MutationObserver(() => {
    const place = pressed;
    if (!place || place.button.isConnected) return;
    const isLost = document.activeElement === null || document.activeElement === document.body;
    pressed = undefined;
    if (isLost && performance.now() - place.at_ms < PATIENCE_ms) neighbourOf(place)?.focus();
  }).observe(page, { childList: true, subtree: true });
}

function placeOf(page: HTMLElement, button: HTMLElement, at_ms: number): Place {
  const words = wordsOf(button);
  const around: Place["around"][number][] = [];
  for (let each = button.parentElement; each && page.contains(each); each = each.parentElement) {
    around.push({
      element: each,
      index: alike(each, words).indexOf(button),
      rank: buttonsIn(each).indexOf(button),
    });
  }
  return { button, words, around, at_ms };
}

function neighbourOf({ words, around }: Place): HTMLElement | undefined {
  for (const { element, index, rank } of around) {
    if (!element.isConnected) continue;
    const left = alike(element, words);
    const next = left[Math.min(index, left.length - 1)];
    if (next) return next;
    const all = buttonsIn(element);
    const other = all[Math.min(rank, all.length - 1)];
    if (other) return other;
    const head = element.matches("[tabindex]") ? element : element.querySelector<HTMLElement>(":scope > summary");
    if (head) return head;
  }
  return undefined;
}

function alike(element: HTMLElement, words: string): HTMLElement[] {
  return buttonsIn(element).filter((each) => wordsOf(each) === words);
}

function buttonsIn(element: HTMLElement): HTMLElement[] {
  const all = [...element.querySelectorAll<HTMLButtonElement>("button:enabled")];
  return all.filter((each) => each.checkVisibility());
}

/** What a button says for all to see; what tells it from its like is for those who hear it. */
function wordsOf(button: HTMLElement): string {
  const seen = [...button.childNodes].filter((each) => !(each instanceof Element && each.classList.contains("unseen")));
  return seen
    .map((each) => each.textContent)
    .join("")
    .replace(/\s+/g, " ")
    .trim();
}
