import { effect, type ReadonlySignal } from "@preact/signals-core";
import { html, nothing, render } from "lit-html";
import type { FieldContext } from "../../fields/fieldContext.ts";
import { reloadView } from "../../look/reloadView.ts";
import { keptPart } from "../../worker/keptPart.ts";
import type { FirstAnswer } from "./firstQuestions.ts";

type Parts = typeof import("./startParts.ts");

/** The questions of quick start, and the job that they begin from. */
export interface QuickStart {
  /** Throws InputError where it could not be fetched. */
  fetch(): Promise<Parts>;
  /** Shows the questions unfolded, and goes to the first of them. */
  begin(): void;
}

/**
 * Keeps the questions of a first phone call in `place`, for every job that is not an example. They are fetched when first needed: most
 * visits are to a job that has been through them.
 */
export function quickStart(place: HTMLElement, context: FieldContext, found: ReadonlySignal<FirstAnswer>): QuickStart {
  const { part: parts, missing, fetch } = keptPart(() => import("./startParts.ts"));
  effect(() => {
    const isExample = context.jobEditor.job.value.isInvented;
    if (isExample) render(nothing, place);
    else if (parts.value) render(parts.value.questionsView(context, found.value), place);
    else if (missing.value !== undefined) render(reloadView(missing.value), place);
    else {
      render(html`<p class="aside">Loading quick start …</p>`, place);
      fetch().catch(() => {}); // its place says so
    }
  });
  return {
    fetch,
    begin() {
      requestAnimationFrame(() => {
        const questions = place.querySelector<HTMLDetailsElement>(".first-questions");
        // Set here, not by the view: whoever folded the questions of one job has those of the next unfolded.
        if (questions) questions.open = true;
        // A smooth way there would aim at where they stood before the answer above them grew.
        questions?.scrollIntoView({ block: "start", behavior: "instant" });
        place.querySelector<HTMLElement>("#first-field-vehicle-name")?.focus({ preventScroll: true });
      });
    },
  };
}
