import { effect } from "@preact/signals-core";
import { html, render } from "lit-html";
import { chapters } from "../../chapters/index.ts";
import { commonPosition } from "../../charts/parts/reading/commonPosition.ts";
import type { FieldContext } from "../../fields/fieldContext.ts";
import { afterFrame } from "../../look/afterFrame.ts";
import { sections } from "../../sections/index.ts";
import { chapterFrame, fillChapter } from "../chapters/chapterView.ts";
import { sectionFrame } from "../figures/sectionView.ts";
import type { Turns } from "../figures/turns.ts";
import { watchWidth } from "../figures/watchWidth.ts";
import type { Graph } from "../graph/graph.ts";
import { notesRead } from "../notes/noteReader.ts";
import { openWorkings } from "../workings/openWorkings.ts";
import { workingsHead } from "../workings/workingsHead.ts";
import { fillSections } from "./fillSections.ts";

/** Where what stands below the answer is put. */
export interface BelowPlaces {
  readonly chapters: HTMLElement;
  readonly workings: HTMLElement;
}

export interface BelowSetting {
  readonly graph: Graph;
  readonly context: FieldContext;
  readonly turns: Turns;
  readonly attempt: (work: () => Promise<unknown>) => void;
}

/** What may be asked of the workings that stand on the page. */
export interface Filled {
  /** Opens all of them; resolves once what they show is there. */
  openAll(): Promise<void>;
  /** Opens the working that an id lies in. */
  openFor(id: string): void;
}

/** Puts chapters and workings into `page` and keeps them there, true to the job. */
export function fillBelow(page: HTMLElement, places: BelowPlaces, setting: BelowSetting): Filled {
  const { graph, turns } = setting;
  // What stands below is worked out once the frame with the answer is painted, which it would hold up.
  graph.add([{ name: "answerPainted", inputs: ["runs"], waitsFor: ["runs"], ask: afterFrame }]);
  graph.add([...sections, ...chapters].map((each) => ({ ...each, waitsFor: [...each.inputs, "answerPainted"] })));
  render(html`${chapters.map(chapterFrame)}`, places.chapters);
  render(
    html`<div data-place="workings-head"></div>
      <div class="workings-width" data-place="workings-width"></div>
      ${sections.map(sectionFrame)}
      <div class="below further-notes" data-place="otherNotes"></div>`,
    places.workings,
  );
  const place = (name: string) =>
    places.workings.querySelector<HTMLElement>(`[data-place="${name}"]`) ?? places.workings;
  const workings = openWorkings(page, sections, setting.context.view.openWorkings);
  effect(() => {
    render(workingsHead(workings), place("workings-head"));
  });
  const common = commonPosition();
  chapters.forEach((chapter, order) => {
    const whole = places.chapters.querySelector<HTMLElement>(`#${chapter.name}`) ?? places.chapters;
    fillChapter(chapter, graph.read(chapter.name), whole, { ...setting, common, order, retry: graph.retry });
  });
  const width_px = watchWidth(place("workings-width"), turns);
  fillSections(sections, places.workings, { ...setting, workings, common, width_px, before: chapters.length });
  return {
    openFor: workings.openFor,
    async openAll() {
      workings.openAll();
      await notesRead();
    },
  };
}
