import { effect } from "@preact/signals-core";
import { render } from "lit-html";
import type { EarlierLook } from "./earlierLook.ts";
import { earlierView } from "./earlierView.ts";
import { fences } from "./fences.ts";

/** What an earlier version leaves without an answer: everything that a person gives, and the first questions. */
const GIVEN =
  '.given > [data-place="given"], .chapter [data-place="given"], [data-place="note"], [data-place="otherNotes"], [data-place="first"], [data-part="day"], [data-part="controls"], [data-part="pin"]';

/**
 * Keeps the band over the page true to what is looked at, and closes every field meanwhile. `attempt` does what may fail.
 * The function returned closes fields that came to the page meanwhile.
 */
export function showEarlier(
  page: HTMLElement,
  look: EarlierLook,
  attempt: (work: () => Promise<unknown>) => void,
): () => void {
  const band = document.createElement("aside");
  band.className = "looking";
  band.setAttribute("aria-label", "Earlier version");
  page.before(band);
  const { close, open } = fences(page, GIVEN);
  let cameFrom: HTMLElement | undefined;

  const focusAfter = (element: HTMLElement | null | undefined) => {
    if (element?.isConnected) element.focus();
  };
  const goBack = () => {
    look.back();
    focusAfter(cameFrom);
  };
  const takeUp = () =>
    attempt(async () => {
      await look.takeUp();
      focusAfter(page.querySelector<HTMLElement>(".masthead .tools button:enabled"));
    });

  let shown: unknown;
  effect(() => {
    const now = look.looked.value?.version;
    render(earlierView(look, goBack, takeUp), band);
    page.toggleAttribute("data-looking", now !== undefined);
    if (now === shown) return;
    if (now && !shown && document.activeElement instanceof HTMLElement) cameFrom = document.activeElement;
    shown = now;
    if (!now) {
      open();
      return;
    }
    close();
    scrollTo({ top: 0 });
    focusAfter(band.querySelector<HTMLElement>(".looking-body"));
  });
  return () => {
    if (shown) close();
  };
}
