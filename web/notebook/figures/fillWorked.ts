import { computed, effect, type ReadonlySignal, type Signal, signal } from "@preact/signals-core";
import { nothing, render } from "lit-html";
import type { Chart } from "../../charts/parts/figure/chart.ts";
import type { CommonPosition } from "../../charts/parts/reading/commonPosition.ts";
import { type ReadableFigure, readableFigure } from "../../charts/parts/reading/crosshair.ts";
import { keepShared } from "../../editing/keepShared.ts";
import type { FieldContext } from "../../fields/fieldContext.ts";
import type { AnySection, Figure, Worked } from "../../sections/parts/section.ts";
import type { Reading } from "../graph/graph.ts";
import { type NamedFigure, namedFigures } from "../notes/figureNames.ts";
import { figureUnitsOf } from "./figureUnitsOf.ts";
import { figureView } from "./figureView.ts";
import { type DrawnFor, isToDraw } from "./isToDraw.ts";
import { offersView } from "./offersView.ts";
import { failureView, findingView, type Places } from "./sectionView.ts";
import { tableView } from "./tableView.ts";
import type { Turns } from "./turns.ts";

export interface Drawn {
  readonly turns: Turns;
  readonly width_px: ReadonlySignal<number>;
  readonly context: FieldContext;
  readonly firstNumber: ReadonlySignal<number>;
  /** The section's figures by name, told to whoever numbers them. */
  readonly named: Signal<readonly NamedFigure[]>;
  readonly common: CommonPosition;
  /** How far from what is being read; least first. Known without measuring the page, which would lay it out anew. */
  readonly urgency: () => number;
  /** Whether its figures, tables and finding are looked at; what is folded away is not drawn. */
  readonly isOpen: () => boolean;
  readonly attempt: (work: () => Promise<unknown>) => void;
  /** Asks again for what could not be worked out. */
  readonly retry: () => void;
}

/** Keeps a section's figures, tables and finding true to its reading. */
export function fillWorked(
  section: AnySection,
  reading: ReadonlySignal<Reading<unknown>>,
  places: Places,
  drawn: Drawn,
): void {
  const { turns, width_px, context, urgency, isOpen, retry } = drawn;
  const worked = signal<readonly Worked[]>([]);
  const units = computed(() => figureUnitsOf(context.view.units.value));
  let drawnFor: DrawnFor | undefined;
  /** Shows figures when all are drawn; those of a generator take a turn each, and give way to newer ones. */
  const draw = (figures: readonly Worked[] | Generator<Worked, void>, before: readonly Worked[] = []) => {
    const name = `figures of ${section.name}`;
    if (!("next" in figures)) {
      worked.value = figures;
      turns.take(name, urgency, () => {}); // in the place of older ones that still wait
      return;
    }
    turns.take(name, urgency, () => {
      try {
        const { done, value } = figures.next();
        if (done) worked.value = before;
        else draw(figures, [...before, value]);
      } catch (error) {
        fail(error);
      }
    });
  };
  const fail = (error: unknown) => {
    drawnFor = undefined;
    globalThis.reportError?.(error); // a fault of ours: the page says only that it is one
    render(failureView(section, section.name, error, retry), places.finding);
  };
  /** What stands here is of another job, or was taken out for that. */
  let isStale = false;
  effect(() => {
    const now = reading.value;
    if (now.state === "waiting") isStale = true;
    if (!isOpen() && !isStale) {
      places.whole.removeAttribute("data-late");
      return; // what nobody looks at is not drawn, but no figure of another job stays
    }
    const drawing = { document, width_px: width_px.value, units: units.value };
    turns.take(section.name, urgency, () => {
      const isLate = now.state === "ready" && now.isLate;
      places.whole.toggleAttribute("data-late", now.state === "waiting" || (isLate && isOpen()));
      if (now.state === "waiting" || !isOpen()) {
        // Nothing is known yet: what stands here is of another job, if of any.
        if (isStale) {
          drawnFor = undefined;
          draw([]);
          render(nothing, places.finding);
        }
        isStale = now.state === "waiting";
        return;
      }
      isStale = false;
      if (now.state === "failed") {
        drawnFor = undefined;
        draw([]); // figures of what was before would look like those of what is
        render(failureView(section, now.where, now.error, retry), places.finding);
        return;
      }
      const { value } = now;
      try {
        const wanted = { value, width_px: drawing.width_px, units: drawing.units };
        if (isToDraw(drawnFor, wanted, isLate)) {
          draw(section.plot(value as never, drawing));
          drawnFor = wanted;
        }
        const attention = section.attention?.(value as never) ?? [];
        const inShort = section.inShort?.(value as never);
        const offers = offersView(section.name, section.offers?.(value as never) ?? [], context);
        render(findingView(section.sentence(value as never), attention, isLate, inShort, offers), places.finding);
      } catch (error) {
        fail(error);
      }
    });
  });
  showWorked(section, worked, places, drawn);
}

/** Puts figures with their numbers, and tables, into the page. */
function showWorked(
  section: AnySection,
  worked: ReadonlySignal<readonly Worked[]>,
  places: Places,
  { firstNumber, named, common, attempt }: Drawn,
): void {
  let readers: readonly ReadableFigure[] = [];
  effect(() => {
    let number = firstNumber.value;
    let tables = 0;
    const figures = worked.value.filter((each) => "chart" in each);
    named.value = keepShared(named.peek(), namedFigures(section.name, figures));
    const readable = inReaders(figures, readers, common);
    readers = [...readable.values()];
    render(
      worked.value.map((each) => {
        const reader = "chart" in each ? readable.get(each.chart) : undefined;
        if ("chart" in each) return reader ? figureView(each, reader.element, number++, attempt) : nothing;
        tables += 1;
        return tableView(each, `${section.name}-table-${tables}`);
      }),
      places.worked,
    );
  });
}

/**
 * Each chart in a reader: in that which has it, else in one that has none any more, so that its slider keeps the keyboard while
 * the figure is drawn anew and nothing around it is laid out again; else in a new one. Readers left over are ended.
 */
function inReaders(
  figures: readonly Figure[],
  before: readonly ReadableFigure[],
  common: CommonPosition,
): Map<Chart, ReadableFigure> {
  const free = before.filter((reader) => !figures.some(({ chart }) => chart === reader.chart()));
  const readable = new Map<Chart, ReadableFigure>();
  for (const { chart, caption } of figures) {
    const reader = before.find((each) => each.chart() === chart) ?? free.shift();
    reader?.show(chart, caption);
    readable.set(chart, reader ?? readableFigure(chart, caption, common));
  }
  for (const reader of free) reader.end();
  return readable;
}
