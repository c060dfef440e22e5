import { html, nothing, render } from "lit-html";
import { failureWords } from "../../../shared/failureWords.ts";
import { InputError } from "../../../shared/problems.ts";
import { reloadView } from "../../look/reloadView.ts";
import { fetchPart } from "../../worker/fetchPart.ts";
import type { BelowPlaces, BelowSetting, Filled } from "./fillBelow.ts";

/**
 * Chapters and workings are more than half of the page's script, and the answer needs none of it: they are fetched when the answer
 * stands, or when somebody goes there before. Until then their places say so and keep a height. The function returned fetches and
 * fills them once; it has nothing where they could not be had, and their places say that. `onFilled` is called when they stand.
 */
export function belowAnswer(
  page: HTMLElement,
  places: BelowPlaces,
  setting: BelowSetting,
  onFilled: () => void,
): () => Promise<Filled | undefined> {
  const all: readonly HTMLElement[] = [places.chapters, places.workings];
  render(html`<p class="aside">Loading the chapters …</p>`, places.chapters);
  render(html`<p class="aside">Loading the workings …</p>`, places.workings);
  const tryToFill = async () => {
    try {
      const { fillBelow } = await fetchPart(() => import("./fillBelow.ts"));
      for (const place of all) {
        render(nothing, place);
        delete place.dataset["loading"];
      }
      const filled = fillBelow(page, places, setting);
      onFilled();
      return filled;
    } catch (error) {
      const words = failureWords(error);
      for (const place of all) render(reloadView(words), place);
      if (!(error instanceof InputError)) throw error;
      return undefined;
    }
  };
  for (const place of all) place.dataset["loading"] = "";
  let filled: Promise<Filled | undefined> | undefined;
  return () => {
    filled ??= tryToFill();
    return filled;
  };
}
