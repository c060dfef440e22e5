import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { html, nothing, render, type TemplateResult } from "lit-html";
import { failureWords } from "../../../shared/failureWords.ts";
import type { AnyChapter } from "../../chapters/parts/chapter.ts";
import type { CommonPosition } from "../../charts/parts/reading/commonPosition.ts";
import { type ReadableFigure, readableFigure } from "../../charts/parts/reading/crosshair.ts";
import { EmptyFields } from "../../editing/emptied.ts";
import { createForm, type FieldContext } from "../../fields/fieldContext.ts";
import { unbroken } from "../../look/unbroken.ts";
import { figureUnitsOf } from "../figures/figureUnitsOf.ts";
import { figureTools } from "../figures/figureView.ts";
import { type DrawnFor, isToDraw } from "../figures/isToDraw.ts";
import type { Turns } from "../figures/turns.ts";
import { watchWidth } from "../figures/watchWidth.ts";
import type { Reading } from "../graph/graph.ts";

export interface ChapterSetting {
  readonly turns: Turns;
  readonly context: FieldContext;
  readonly common: CommonPosition;
  readonly attempt: (work: () => Promise<unknown>) => void;
  /** Asks again for what could not be worked out. */
  readonly retry: () => void;
  /** Its place among the chapters, which is the order they are drawn in. */
  readonly order: number;
}

/** The frame of a chapter: heading and places for its sentence, inputs and figure. */
export function chapterFrame({ name, title, working }: AnyChapter): TemplateResult {
  return html`<section id=${name} class="chapter" aria-labelledby="${name}-title" tabindex="-1">
    <div class="chapter-text">
      <h2 id="${name}-title">${title}</h2>
      <p class="sentence" data-place="sentence"></p>
      <p class="aside"><a href="#${working}">The numbers behind this</a></p>
      <div data-place="given"></div>
    </div>
    <div class="chapter-figure" data-place="figure"></div>
  </section>`;
}

/** Keeps a chapter's sentence, inputs and figure true to its reading. */
export function fillChapter(
  chapter: AnyChapter,
  reading: ReadonlySignal<Reading<unknown>>,
  whole: HTMLElement,
  { turns, context, common, attempt, retry, order }: ChapterSetting,
): void {
  const place = (name: string) => whole.querySelector<HTMLElement>(`[data-place="${name}"]`) ?? whole;
  const figurePlace = place("figure");
  const width_px = watchWidth(figurePlace, turns);
  const units = computed(() => figureUnitsOf(context.view.units.value));
  const message = signal("");
  let reader: ReadableFigure | undefined;
  let drawnFor: DrawnFor | undefined;
  const clear = () => {
    reader?.end();
    reader = undefined;
    render(nothing, figurePlace);
  };
  effect(() => {
    render(chapter.given?.(createForm({ ...context, idPrefix: "chapter-" })) ?? nothing, place("given"));
  });
  effect(() => {
    const now = reading.value;
    const drawing = { document, width_px: width_px.value, units: units.value };
    whole.toggleAttribute("data-late", now.state === "waiting" || (now.state === "ready" && now.isLate));
    if (now.state !== "ready") {
      // What stands here is of something else: of another job, or of what was before the failure.
      message.value = now.state === "failed" ? `This could not be calculated. ${failureWords(now.error)}` : "";
      turns.take(chapter.name, () => order, clear); // in the place of a drawing that still waits
      drawnFor = undefined;
      return;
    }
    const wanted = { value: now.value, width_px: drawing.width_px, units: drawing.units };
    if (!isToDraw(drawnFor, wanted, now.isLate)) return;
    drawnFor = wanted;
    turns.take(
      chapter.name,
      () => order,
      () => {
        const value = now.value as never;
        message.value = unbroken(chapter.sentence(value));
        const figure = chapter.plot(value, drawing);
        if (!figure) {
          clear();
          return;
        }
        const { chart, caption } = figure;
        if (reader) reader.show(chart, caption);
        else reader = readableFigure(chart, caption, common);
        render(
          html`<figure>${reader.element}<figcaption>${unbroken(caption)}</figcaption>${figureTools(figure, caption, attempt)}</figure>`,
          figurePlace,
        );
      },
    );
  });
  effect(() => {
    const { value: now } = reading;
    const again =
      now.state === "failed" && !(now.error instanceof EmptyFields)
        ? html` <button type="button" class="as-link" @click=${retry}>Try again</button>`
        : nothing;
    render(html`${message.value === "" ? "Calculating …" : message.value}${again}`, place("sentence"));
  });
}
