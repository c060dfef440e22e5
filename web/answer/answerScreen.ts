import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { html, nothing, render } from "lit-html";
import { createForm, type FieldContext } from "../fields/fieldContext.ts";
import { answerTable } from "./answerTable.ts";
import { controlsView } from "./controlsView.ts";
import { createDayBefore, dayControl } from "./dayControl.ts";
import { bandWords, headlineView, spokenAnswer } from "./headlineView.ts";
import { rowsShown } from "./picture/rowsShown.ts";
import { pictureFigure } from "./pictureFigure.ts";
import { pinView } from "./pinView.ts";
import { settleView } from "./settleView.ts";
import type { ShownAnswer } from "./shownAnswer.ts";
import { tableView } from "./tableView.ts";

export interface AnswerScreen {
  /** The answer in words once it is settled; empty until then. */
  readonly spoken: ReadonlySignal<string>;
  /** How far it may go either way. */
  readonly band: ReadonlySignal<string>;
}

/**
 * Fills the answer's place on the page and keeps it true to the job: verdict, sentence, picture, table and the few things that are
 * talked about. It is drawn at once, before any figure of the workings.
 */
export function fillAnswer(
  place: HTMLElement,
  shown: ReadonlySignal<ShownAnswer>,
  context: FieldContext,
  retry: () => void,
  now: () => Date = () => new Date(),
): AnswerScreen {
  const { jobEditor, view } = context;
  const part = frame(place);
  const day = createDayBefore();
  const form = () => createForm({ ...context, idPrefix: "answer-" });
  // What stands, apart from whether it is late: table and picture are laid out anew only for another answer.
  const standing = computed(() => shown.value.answer);
  const chosen = computed(() => {
    const answer = standing.value;
    const wanted = view.packIndex.value;
    return answer && wanted !== undefined && wanted < answer.packs.length ? wanted : answer?.recommended;
  });
  const choose = (index: number) => {
    view.packIndex.value = index === shown.peek().answer?.recommended ? undefined : index;
  };
  const isAll = signal(false);
  effect(() => {
    // What is looked at in one job means nothing in the next.
    jobEditor.opened.value;
    day.before_km.value = undefined;
    isAll.value = false;
  });
  const rows = computed(() => (standing.value ? rowsShown(standing.value, chosen.value) : []));

  effect(() => {
    const isWaiting = Object.values(jobEditor.drafts.value).some(({ problem }) => problem !== undefined);
    render(
      html`${headlineView(shown.value, chosen.value, view.units.value, retry)}
      ${isWaiting && !shown.value.failure ? html`<p class="aside">Fields that cannot be read count with their last value.</p>` : nothing}`,
      part("say"),
    );
    place.dataset["late"] = shown.value.late;
    place.toggleAttribute("data-sampled", shown.value.isSampled === true);
  });
  effect(() => {
    render(dayControl(form(), day), part("day"));
  });
  effect(() => {
    render(html`<h3>Change it</h3>${controlsView(form())}`, part("controls"));
  });
  effect(() => {
    const { answer, late } = shown.value;
    render(pinView(form(), late === "none" ? answer : undefined, chosen.value, now), part("pin"));
    render(answer ? settleView(answer, chosen.value, view.units.value) : nothing, part("settle"));
  });
  const charging = computed(() => shown.value.charging);
  const costs = computed(() => shown.value.costs);
  effect(() => {
    const answer = standing.value;
    if (!answer) {
      render(nothing, part("table"));
      return;
    }
    const { packs } = answer;
    const { length } = packs;
    const all = packs.map((_, i) => i);
    const shownRows = isAll.value ? all : rows.value;
    const { pinned } = jobEditor.job.value;
    const table = answerTable(answer, shownRows, view.units.value, pinned, charging.value, costs.value);
    const fold = () => {
      isAll.value = !isAll.value;
    };
    const words = isAll.value ? "show four" : `all ${length}`;
    const more =
      length > rows.value.length
        ? html` <button type="button" class="as-link" aria-expanded=${isAll.value} @click=${fold}>${words}</button>`
        : nothing;
    render(tableView(table, chosen.value, view.units.value, choose, more), part("table"));
  });
  pictureFigure(part("picture"), { shown, standing, rows, chosen, choose, context });
  return {
    spoken: computed(() => spokenAnswer(shown.value, chosen.value, view.units.value)),
    band: computed(() => bandWords(shown.value, chosen.value, view.units.value)),
  };
}

/** The places of the answer, in the order in which they are read. */
function frame(place: HTMLElement): (name: string) => HTMLElement {
  render(
    html`<div data-part="say"></div>
      <div class="shown">
        <div data-part="picture"></div>
        <div data-part="table"></div>
      </div>
      <div class="change">
        <div data-part="day"></div>
        <div data-part="settle"></div>
        <div data-part="controls"></div>
        <div data-part="pin"></div>
      </div>`,
    place,
  );
  return (name) => place.querySelector<HTMLElement>(`[data-part="${name}"]`) ?? place;
}
