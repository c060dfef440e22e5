import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { html, nothing, render } from "lit-html";
import { fillAnswer } from "../answer/answerScreen.ts";
import { type Standing, shownAnswer } from "../answer/shownAnswer.ts";
import { chapters } from "../chapters/index.ts";
import { commonPosition } from "../charts/parts/reading/commonPosition.ts";
import type { JobEditor } from "../editing/jobEditor.ts";
import { keepShared } from "../editing/keepShared.ts";
import { unusualFields } from "../editing/unusual.ts";
import { createForm, type FieldContext } from "../fields/fieldContext.ts";
import type { AnySection } from "../sections/parts/section.ts";
import type { Jobs } from "../store/jobsDoor.ts";
import { barView } from "./barView.ts";
import { chapterFrame, fillChapter } from "./chapters/chapterView.ts";
import { fillWorked } from "./figures/fillWorked.ts";
import { type Places, placesOf, sectionFrame } from "./figures/sectionView.ts";
import { createTurns } from "./figures/turns.ts";
import { watchWidth } from "./figures/watchWidth.ts";
import type { Graph } from "./graph/graph.ts";
import { type Complaint, complaintView } from "./jobs/complaintView.ts";
import { earlierLook } from "./jobs/earlierLook.ts";
import { fences } from "./jobs/fences.ts";
import { sharedNote } from "./jobs/sharedNote.ts";
import { showEarlier } from "./jobs/showEarlier.ts";
import { showJobs } from "./jobs/showJobs.ts";
import { takeDroppedFiles } from "./jobs/takeDroppedFiles.ts";
import { keepFocus } from "./keepFocus.ts";
import { listenForUndo } from "./listenForUndo.ts";
import { type NamedFigure, type NumberedFigure, numberedFigures } from "./notes/figureNames.ts";
import { noteView, otherNotesView } from "./notes/noteView.ts";
import { paperOnPage } from "./paper/paperOnPage.ts";
import { fillReasons } from "./reasons/fillReasons.ts";
import { sayWhenSettled } from "./sayWhenSettled.ts";
import { questionsView } from "./start/firstQuestions.ts";
import { ownCar } from "./start/ownCar.ts";
import { openWorkings } from "./workings/openWorkings.ts";
import { standingOf } from "./workings/standing.ts";
import { summaryView } from "./workings/summaryView.ts";
import { workingsHead } from "./workings/workingsHead.ts";

export interface Notebook {
  readonly sections: readonly AnySection[];
  readonly graph: Graph;
  readonly jobEditor: JobEditor;
  readonly context: FieldContext;
  readonly jobs: Jobs;
  /** The page was sent with its job inside, to be looked at. */
  readonly isShared: boolean;
}

/** Where things are written that a page which was sent does not change. */
const WRITTEN =
  '.given > [data-place="given"], .chapter [data-place="given"], [data-place="note"], [data-place="otherNotes"]';

/** Puts the notebook on the page and keeps it there, true to the job. The only file that touches the page. */
export function mount(page: HTMLElement, notebook: Notebook): void {
  const { sections, jobEditor, context } = notebook;
  const turns = createTurns((isWaiting) => page.toggleAttribute("data-drawing", isWaiting));
  const spoken = signal("");
  const figuresOf = sections.map(() => signal<readonly NamedFigure[]>([]));
  let numbered: readonly NumberedFigure[] = [];
  const figures = computed(() => {
    const { hiddenSections } = jobEditor.job.value;
    const isHidden = (i: number) => hiddenSections.includes(sections[i].name);
    const now = numberedFigures(figuresOf.map((each, i) => ({ figures: each.value, isHidden: isHidden(i) })));
    numbered = keepShared(numbered, now);
    return numbered;
  });

  page.replaceChildren();
  render(
    html`<a class="skip" href="#answer">To the answer</a> <a class="skip" href="#chapters">To the chapters</a>
      <a class="skip" href="#workings">To the workings</a>
      <header class="masthead">
        <h1 data-place="title"></h1>
        <div data-place="keeping"></div>
        <div class="tools" data-place="tools"></div>
        <div data-place="jobs"></div>
        <div class="complaint" role="alert" data-place="complaint"></div>
      </header>
      <div class="answer" id="answer" tabindex="-1" data-place="answer"></div>
      <div data-place="first"></div>
      <div id="chapters" class="chapters" tabindex="-1">${chapters.map(chapterFrame)}</div>
      <section id="paper" class="paper-part" aria-labelledby="paper-title" tabindex="-1" data-place="paper-part"></section>
      <div id="workings" class="workings" tabindex="-1">
        <div data-place="workings-head"></div>
        <div class="workings-width" data-place="workings-width"></div>
        ${sections.map(sectionFrame)}
        <div class="below further-notes" data-place="otherNotes"></div>
      </div>
      <p class="unseen" role="status" data-place="status"></p>`,
    page,
  );
  const place = (name: string) => page.querySelector<HTMLElement>(`[data-place="${name}"]`) ?? page;
  const readings = sections.map(({ name }) => notebook.graph.read(name));

  const { graph } = notebook;
  const standing = <T>(name: string) => graph.read(name).value as Standing<T>;
  const shown = computed(() => shownAnswer(standing("use"), standing("runs"), standing("packUnknowns")));
  const { spoken: answer, band } = fillAnswer(place("answer"), shown, context);
  effect(() => {
    const { title, isInvented } = jobEditor.job.value;
    const state = jobEditor.isLooking.value ? " (an earlier version)" : "";
    document.title = `${title}${state} · Bellhousing`;
    place("title").textContent = title;
    page.toggleAttribute("data-invented", isInvented);
  });
  sayWhenSettled(answer, say);
  effect(() => {
    page.toggleAttribute("data-for-client", context.view.isForClient.value);
  });
  const workings = openWorkings(page, sections);
  effect(() => {
    render(workingsHead(workings), place("workings-head"));
  });
  effect(() => {
    render(spoken.value, place("status"));
  });

  const complaint = signal<Complaint>([]);
  effect(() => {
    render(complaintView(complaint.value), place("complaint"));
  });
  const look = earlierLook(jobEditor, context.view.packIndex, notebook.jobs);
  const attempt = showJobs(
    notebook.jobs,
    context.view.units,
    { keeping: place("keeping"), jobs: place("jobs") },
    look,
    (found) => {
      complaint.value = found;
    },
  );
  showEarlier(page, look, attempt);
  page.toggleAttribute("data-shared", notebook.isShared);
  if (notebook.isShared) fences(page, WRITTEN).close();
  keepFocus(page);
  takeDroppedFiles((files) => {
    const [file] = files;
    // A file that can only be a log goes to the road, wherever on the page it is let go.
    if (files.every(({ name }) => /\.(gpx|nmea|csv|tsv|txt|log|tcx|kml|fit|xml)$/i.test(name))) {
      workings.openFor("theRoad");
      page.querySelector("#theRoad")?.scrollIntoView();
      attempt(() => context.view.staging.log.bring(files));
    } else if (file) attempt(() => notebook.jobs.importFile(file));
  });

  const isAsking = signal(false);
  const newJob = () =>
    attempt(async () => {
      await notebook.jobs.create(ownCar(), "the usual values");
      isAsking.value = true;
      requestAnimationFrame(() => {
        page.querySelector(".first-questions")?.scrollIntoView({ block: "start" });
        page.querySelector<HTMLElement>("#first-field-vehicle-name")?.focus({ preventScroll: true });
      });
    });
  effect(() => {
    const isDemo = jobEditor.job.value.isInvented;
    const { measureFirst } = shown.value.answer ?? { measureFirst: [] };
    const found = { answer: answer.value, doubt: band.value, measureFirst };
    if (notebook.isShared) {
      render(sharedNote(), place("first"));
      return;
    }
    render(isDemo ? nothing : questionsView(context, isAsking.value, found), place("first"));
  });
  const print = paperOnPage(page, place("paper-part"), {
    graph,
    job: jobEditor.job,
    answer: () => (shown.value.late === "none" ? shown.value.answer : undefined),
    chosen: () => context.view.packIndex.value,
    openWorkings: workings.openAll,
  });
  const share = () => attempt(() => notebook.jobs.share());
  effect(() => {
    render(barView({ jobEditor, context, say, newJob, share, print, isShared: notebook.isShared }), place("tools"));
  });

  const unusual = computed(() => unusualFields(jobEditor.job.value, context.view.units.value));
  const common = commonPosition();
  const width_px = watchWidth(place("workings-width"), turns);
  chapters.forEach((chapter, i) => {
    const whole = page.querySelector<HTMLElement>(`#${chapter.name}`) ?? page;
    fillChapter(chapter, notebook.graph.read(chapter.name), whole, { turns, context, common, attempt, order: i });
  });
  sections.forEach((section, i) => {
    const places = placesOf(page.querySelector<HTMLElement>(`#${section.name}`) ?? page);
    const firstNumber = computed(() => 1 + figuresOf.slice(0, i).reduce((sum, each) => sum + each.value.length, 0));
    const isOpen = () => workings.isOpen(section.name);
    effect(() => {
      const standing = standingOf(section, readings[i].value, jobEditor.drafts.value, unusual.value);
      render(summaryView(section, readings[i].value, standing), places.summary);
    });
    if (section.given) fillGiven(section, places, context, isOpen);
    fillReasons(section, places.reasons, notebook.graph);
    fillBelow(section, places, context, figures);
    const urgency = () => chapters.length + i;
    const { retry } = notebook.graph;
    const drawn = {
      turns,
      width_px,
      context,
      firstNumber,
      named: figuresOf[i],
      common,
      attempt,
      urgency,
      isOpen,
      retry,
    };
    fillWorked(section, readings[i], places, drawn);
  });

  effect(() => {
    render(otherNotesView(sections, context, figures), place("otherNotes"));
  });

  function say(words: string) {
    spoken.value = words;
  }
  listenForUndo(jobEditor, say);
}

function fillGiven(section: AnySection, places: Places, context: FieldContext, isOpen: () => boolean): void {
  effect(() => {
    if (!isOpen()) return;
    render(section.given?.(createForm(context)) ?? nothing, places.given);
  });
}

function fillBelow(
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
