import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { html, nothing, render } from "lit-html";
import { commonPosition } from "../charts/commonPosition.ts";
import { createForm, type Paper } from "../inputs/form.ts";
import type { Jobs } from "../store/jobsDoor.ts";
import { type Complaint, complaintView } from "./complaintView.ts";
import { contentsView } from "./contentsView.ts";
import type { Desk } from "./desk.ts";
import { earlierLook } from "./earlierLook.ts";
import { type NamedFigure, type NumberedFigure, numberedFigures } from "./figureNames.ts";
import { fillReasons } from "./fillReasons.ts";
import { fillWorked } from "./fillWorked.ts";
import { questionsView, welcomeView } from "./firstQuestions.ts";
import { followReading } from "./followReading.ts";
import type { Graph } from "./graph.ts";
import { keepFocus } from "./keepFocus.ts";
import { keepShared } from "./keepShared.ts";
import { listenForUndo } from "./listenForUndo.ts";
import { mastheadView } from "./mastheadView.ts";
import { noteView } from "./noteView.ts";
import { ownCar } from "./ownCar.ts";
import { sayWhenSettled } from "./sayWhenSettled.ts";
import type { AnySection } from "./section.ts";
import { type Places, placesOf, sectionFrame } from "./sectionView.ts";
import { bandOf, doubtOf, shortAnswer } from "./shortAnswer.ts";
import { showEarlier } from "./showEarlier.ts";
import { showJobs } from "./showJobs.ts";
import { standingOf } from "./standing.ts";
import { takeDroppedFiles } from "./takeDroppedFiles.ts";
import { createTurns } from "./turns.ts";
import { watchWidth } from "./watchWidth.ts";

export interface Notebook {
  readonly sections: readonly AnySection[];
  readonly graph: Graph;
  readonly desk: Desk;
  readonly paper: Paper;
  readonly jobs: Jobs;
}

/** Puts the notebook on the page and keeps it there, true to the job. The only file that touches the page. */
export function mount(page: HTMLElement, notebook: Notebook): void {
  const { sections, desk, paper } = notebook;
  const turns = createTurns((isWaiting) => page.toggleAttribute("data-drawing", isWaiting));
  const spoken = signal("");
  const isWide = matchMedia("(min-width: 70rem)").matches;
  const reading = signal(sections[0]?.name ?? "");
  const figuresOf = sections.map(() => signal<readonly NamedFigure[]>([]));
  let numbered: readonly NumberedFigure[] = [];
  const figures = computed(() => {
    const { hiddenSections } = desk.job.value;
    const isHidden = (i: number) => hiddenSections.includes(sections[i].name);
    const now = numberedFigures(figuresOf.map((each, i) => ({ figures: each.value, isHidden: isHidden(i) })));
    numbered = keepShared(numbered, now);
    return numbered;
  });

  page.replaceChildren();
  render(
    html`<a class="skip" href="#${sections[0]?.name}">To the first question</a>
      <header class="masthead">
        <div class="head" data-place="masthead"></div>
        <div data-place="keeping"></div>
        <div data-place="first"></div>
        <div data-place="jobs"></div>
        <div class="complaint" role="alert" data-place="complaint"></div>
      </header>
      <nav class="contents" aria-label="Contents" data-place="contents"></nav>
      <div class="sections">${sections.map(sectionFrame)}</div>
      <p class="unseen" role="status" data-place="status"></p>`,
    page,
  );
  const place = (name: string) => page.querySelector<HTMLElement>(`[data-place="${name}"]`) ?? page;
  const readings = sections.map(({ name }) => notebook.graph.read(name));

  const answer = computed(() => shortAnswer(sections, readings));
  effect(() => {
    const state = desk.isLooking.value ? " (an earlier state)" : "";
    document.title = `${desk.job.value.title}${state} · Bellhousing`;
    render(
      mastheadView({ desk, paper, answer: answer.value, doubt: doubtOf(sections, readings), say }),
      place("masthead"),
    );
  });
  sayWhenSettled(answer, say);
  effect(() => {
    const isForClient = paper.view.isForClient.value;
    page.toggleAttribute("data-for-client", isForClient);
    const shown = sections.filter(({ name }) => !isForClient || !desk.job.value.hiddenSections.includes(name));
    const standings = shown.map((section) =>
      standingOf(section, readings[sections.indexOf(section)].value, desk.drafts.value),
    );
    render(contentsView(shown, standings, reading.value, isWide), place("contents"));
  });
  effect(() => {
    render(spoken.value, place("status"));
  });

  const complaint = signal<Complaint>([]);
  effect(() => {
    render(complaintView(complaint.value), place("complaint"));
  });
  const look = earlierLook(desk, paper.view.packIndex, notebook.jobs);
  const attempt = showJobs(
    notebook.jobs,
    paper.view.units,
    { keeping: place("keeping"), jobs: place("jobs") },
    look,
    (found) => {
      complaint.value = found;
    },
  );
  showEarlier(page, look, attempt);
  keepFocus(page);
  takeDroppedFiles((files) => {
    const [file] = files;
    // A file that can only be a log goes to the road, wherever on the page it is let go.
    if (files.every(({ name }) => /\.(gpx|nmea)$/i.test(name))) {
      page.querySelector("#theRoad")?.scrollIntoView();
      attempt(() => paper.view.bench.log.bring(files));
    } else if (file) attempt(() => notebook.jobs.importFile(file));
  });

  const isAsking = signal(false);
  effect(() => {
    const isDemo = desk.job.value.isInvented;
    const start = () =>
      attempt(async () => {
        await notebook.jobs.create(ownCar(), "the usual values");
        isAsking.value = true;
      });
    const found = { answer: answer.value, doubt: bandOf(sections, readings) };
    render(isDemo ? welcomeView(paper, start) : questionsView(paper, isAsking.value, found), place("first"));
  });

  const common = commonPosition();
  const width_px = watchWidth(page, turns);
  sections.forEach((section, i) => {
    const places = placesOf(page.querySelector<HTMLElement>(`#${section.name}`) ?? page);
    const firstNumber = computed(() => 1 + figuresOf.slice(0, i).reduce((sum, each) => sum + each.value.length, 0));
    if (section.given) fillGiven(section, places, paper);
    fillReasons(section, places.reasons, notebook.graph);
    fillBelow(section, places, paper, figures);
    const urgency = () => Math.abs(i - sections.findIndex(({ name }) => name === reading.peek()));
    const drawn = { turns, width_px, paper, firstNumber, named: figuresOf[i], common, attempt, urgency };
    fillWorked(section, readings[i], places, drawn);
  });

  function say(words: string) {
    spoken.value = words;
  }
  followReading(page, (name) => {
    reading.value = name;
  });
  listenForUndo(desk, paper, say);
}

function fillGiven(section: AnySection, places: Places, paper: Paper): void {
  effect(() => {
    render(section.given?.(createForm(paper)) ?? nothing, places.given);
  });
}

function fillBelow(
  section: AnySection,
  places: Places,
  paper: Paper,
  figures: ReadonlySignal<readonly NumberedFigure[]>,
): void {
  const { desk } = paper;
  effect(() => {
    render(noteView(section, paper, figures), places.note);
    places.whole.toggleAttribute("data-not-for-client", desk.job.value.hiddenSections.includes(section.name));
  });
}
