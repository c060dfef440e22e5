import { computed, effect, type ReadonlySignal, signal } from "@preact/signals-core";
import { html, nothing, render } from "lit-html";
import { commonPosition } from "../charts/commonPosition.ts";
import { createForm, type Paper } from "../inputs/form.ts";
import type { Jobs } from "../store/jobs.ts";
import { contentsView } from "./contentsView.ts";
import type { Desk } from "./desk.ts";
import { type NamedFigure, type NumberedFigure, numberedFigures } from "./figureNames.ts";
import { fillWorked } from "./fillWorked.ts";
import { questionsView, welcomeView } from "./firstQuestions.ts";
import type { Graph, Reading } from "./graph.ts";
import { keepShared } from "./keepShared.ts";
import { mastheadView } from "./mastheadView.ts";
import { noteView } from "./noteView.ts";
import { ownCar } from "./ownCar.ts";
import { reasonsView } from "./reasonsView.ts";
import type { AnySection } from "./section.ts";
import { type Places, placesOf, sectionFrame } from "./sectionView.ts";
import { showJobs } from "./showJobs.ts";
import { standingOf } from "./standing.ts";
import { createTurns, type Turns } from "./turns.ts";
import { unbroken } from "./unbroken.ts";

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
        <p class="complaint" role="alert" data-place="complaint"></p>
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
    document.title = `${desk.job.value.title} · Bellhousing`;
    render(
      mastheadView({ desk, paper, answer: answer.value, doubt: doubtOf(sections, readings), say }),
      place("masthead"),
    );
  });
  sayWhenSettled(answer, say);
  effect(() => {
    const standings = sections.map((section, i) => standingOf(section, readings[i].value, desk.drafts.value));
    render(contentsView(sections, standings, reading.value, isWide), place("contents"));
  });
  effect(() => {
    render(spoken.value, place("status"));
  });

  const complain = signal("");
  effect(() => {
    render(complain.value, place("complaint"));
  });
  const attempt = showJobs(
    notebook.jobs,
    paper.view.units,
    { keeping: place("keeping"), jobs: place("jobs") },
    (words) => {
      complain.value = words;
    },
  );
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
    const open = readings[sections.findIndex(({ name }) => name === "whatIsOpen")]?.value;
    const doubt =
      open?.state === "ready"
        ? unbroken(sections.find(({ name }) => name === "whatIsOpen")?.sentence(open.value as never) ?? "")
        : "";
    render(
      isDemo ? welcomeView(paper, start) : questionsView(paper, isAsking.value, { answer: answer.value, doubt }),
      place("first"),
    );
  });

  const common = commonPosition();
  const width_px = watchWidth(page, turns);
  sections.forEach((section, i) => {
    const places = placesOf(page.querySelector<HTMLElement>(`#${section.name}`) ?? page);
    const firstNumber = computed(() => 1 + figuresOf.slice(0, i).reduce((sum, each) => sum + each.value.length, 0));
    if (section.given) fillGiven(section, places, paper);
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

/** The finding of the last question, which is the one the client came with. */
function shortAnswer(sections: readonly AnySection[], readings: readonly ReadonlySignal<Reading<unknown>>[]): string {
  const reading = readings.at(-1)?.value;
  return reading?.state === "ready" ? unbroken(sections.at(-1)?.inShort?.(reading.value as never) ?? "") : "";
}

/** What speaks against promising the answer yet; nothing where the doubts leave it standing. */
function doubtOf(sections: readonly AnySection[], readings: readonly ReadonlySignal<Reading<unknown>>[]): string {
  const place = sections.findIndex(({ name }) => name === "whatIsOpen");
  const reading = readings[place]?.value;
  if (reading?.state !== "ready" || reading.isLate) return "";
  return unbroken(sections[place]?.attention?.(reading.value as never)[0] ?? "");
}

/** Longer than between two keys, so that nobody is told every answer on the way to the one meant. */
const SETTLED_ms = 1500;

/** Tells those who do not see it that the answer has become another one, once it has settled. */
function sayWhenSettled(answer: ReadonlySignal<string>, say: (words: string) => void): void {
  let told: string | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const words = answer.value;
    clearTimeout(waiting);
    if (words === "") return;
    if (told === undefined) told = words; // as the page opened
    waiting = setTimeout(() => {
      if (words !== told) say(words);
      told = words;
    }, SETTLED_ms);
  });
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
  const { desk, view } = paper;
  effect(() => {
    render(reasonsView(section.explains ?? [], desk.job.value, view.units.value), places.reasons);
  });
  effect(() => {
    render(noteView(section, paper, figures), places.note);
    places.whole.toggleAttribute("data-not-for-client", desk.job.value.hiddenSections.includes(section.name));
  });
}

/** What a figure is drawn for on paper: the width of an A4 page between its margins. */
const PAPER_px = 680;

/**
 * Width that figures are drawn for, following the page's in steps, so that a window being dragged draws few times. On
 * paper it is the paper's, and everything is drawn before the printer asks for it: a figure that changed its height once
 * the pages are counted would push the last of them out. (The print medium is told of too late for that.)
 */
function watchWidth(page: HTMLElement, turns: Turns): ReadonlySignal<number> {
  const body = page.querySelector<HTMLElement>(".finding .body") ?? page;
  const step_px = 20;
  let isOnPaper = false;
  const stepped = () =>
    isOnPaper ? PAPER_px : Math.max(320, Math.min(1200, Math.floor(body.clientWidth / step_px) * step_px));
  const width_px = signal(stepped());
  const follow = () => {
    width_px.value = stepped();
  };
  new ResizeObserver(follow).observe(body);
  const lay = (onPaper: boolean) => {
    isOnPaper = onPaper;
    follow();
    if (onPaper) turns.finish();
  };
  addEventListener("beforeprint", () => lay(true));
  addEventListener("afterprint", () => lay(false));
  return width_px;
}

/** Tells which section is being read: the last whose heading has passed the upper third of the window. */
function followReading(page: HTMLElement, tell: (name: string) => void): void {
  const sections = [...page.querySelectorAll<HTMLElement>("section")];
  const look = () => {
    const passed = sections.filter((each) => each.getBoundingClientRect().top < innerHeight / 3);
    const atEnd = scrollY + innerHeight >= document.documentElement.scrollHeight - 2;
    tell((atEnd ? sections.at(-1) : passed.at(-1))?.id ?? sections[0]?.id ?? "");
  };
  let isComing = false;
  addEventListener(
    "scroll",
    () => {
      if (isComing) return;
      isComing = true;
      requestAnimationFrame(() => {
        isComing = false;
        look();
      });
    },
    { passive: true },
  );
  look();
}

/** Takes files that are dropped anywhere on the page, instead of leaving the page for them. */
function takeDroppedFiles(open: (files: readonly File[]) => void): void {
  addEventListener("dragover", (event) => event.preventDefault());
  addEventListener("drop", (event) => {
    const files = Array.from(event.dataTransfer?.files ?? []);
    if (files.length === 0) return;
    event.preventDefault();
    open(files);
  });
}

/** Ctrl+Z and its kin, left to the browser while a field holds letters that are not in the job yet. */
function listenForUndo(desk: Desk, paper: Paper, say: (words: string) => void): void {
  addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || paper.typing.value !== undefined) return;
    const key = event.key.toLowerCase();
    const isRedo = key === "y" || (key === "z" && event.shiftKey);
    if (key !== "z" && !isRedo) return;
    event.preventDefault();
    const what = isRedo ? desk.redo() : desk.undo();
    say(what === undefined ? "Nothing to take back." : `${isRedo ? "Done again" : "Taken back"}: ${what}.`);
  });
}
