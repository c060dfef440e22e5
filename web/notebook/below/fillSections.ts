import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { nothing, render } from "lit-html";
import type { CommonPosition } from "../../charts/parts/reading/commonPosition.ts";
import { keepShared } from "../../editing/keepShared.ts";
import { unusualFields } from "../../editing/unusual.ts";
import { createForm, type FieldContext } from "../../fields/fieldContext.ts";
import type { AnySection } from "../../sections/parts/section.ts";
import { fillWorked } from "../figures/fillWorked.ts";
import { type Places, placesOf } from "../figures/sectionView.ts";
import { type NamedFigure, type NumberedFigure, numberedFigures } from "../notes/figureNames.ts";
import { noteView, otherNotesView } from "../notes/noteView.ts";
import { fillReasons } from "../reasons/fillReasons.ts";
import type { OpenWorkings } from "../workings/openWorkings.ts";
import { standingOf } from "../workings/standing.ts";
import { summaryView } from "../workings/summaryView.ts";
import type { BelowSetting } from "./fillBelow.ts";

interface SectionsSetting extends BelowSetting {
  readonly workings: OpenWorkings;
  readonly common: CommonPosition;
  readonly width_px: ReadonlySignal<number>;
  /** How much on the page is drawn before them. */
  readonly before: number;
}

/** Fills the frames of the workings in `place`, and the notes that follow none of them; figures are numbered from the top. */
export function fillSections(sections: readonly AnySection[], place: HTMLElement, setting: SectionsSetting): void {
  const { graph, context, workings, before } = setting;
  const { jobEditor } = context;
  const figuresOf = sections.map(() => signal<readonly NamedFigure[]>([]));
  let numbered: readonly NumberedFigure[] = [];
  const figures = computed(() => {
    const { hiddenSections } = jobEditor.job.value;
    const isHidden = (i: number) => hiddenSections.includes(sections[i].name);
    const now = numberedFigures(figuresOf.map((each, i) => ({ figures: each.value, isHidden: isHidden(i) })));
    numbered = keepShared(numbered, now);
    return numbered;
  });
  const unusual = computed(() => unusualFields(jobEditor.job.value, context.view.units.value));

  sections.forEach((section, i) => {
    const places = placesOf(place.querySelector<HTMLElement>(`#${section.name}`) ?? place);
    const reading = graph.read(section.name);
    const firstNumber = computed(() => 1 + figuresOf.slice(0, i).reduce((sum, each) => sum + each.value.length, 0));
    const isOpen = () => workings.isOpen(section.name);
    effect(() => {
      const standing = standingOf(section, reading.value, jobEditor.drafts.value, unusual.value);
      render(summaryView(section, reading.value, standing), places.summary);
    });
    if (section.given) fillGiven(section, places, context, isOpen);
    fillReasons(section, places.reasons, graph);
    fillNote(section, places, context, figures);
    fillWorked(section, reading, places, {
      ...setting,
      firstNumber,
      named: figuresOf[i],
      isOpen,
      retry: graph.retry,
      urgency: () => before + i,
    });
  });
  effect(() => {
    const others = place.querySelector<HTMLElement>('[data-place="otherNotes"]');
    if (others) render(otherNotesView(sections, context, figures), others);
  });
}

function fillGiven(section: AnySection, places: Places, context: FieldContext, isOpen: () => boolean): void {
  effect(() => {
    if (!isOpen()) return;
    render(
      section.given?.(createForm({ ...context, idPrefix: section.idPrefix ?? context.idPrefix })) ?? nothing,
      places.given,
    );
  });
}

function fillNote(
  section: AnySection,
  places: Places,
  context: FieldContext,
  figures: ReadonlySignal<readonly NumberedFigure[]>,
): void {
  const { jobEditor } = context;
  effect(() => {
    render(noteView(section, context, figures), places.note);
    places.whole.toggleAttribute("data-not-for-client", jobEditor.job.value.hiddenSections.includes(section.name));
  });
}
