import { computed, effect, signal } from "@preact/signals-core";
import { html, render } from "lit-html";
import { fillAnswer } from "../answer/answerScreen.ts";
import { rememberAnswer, type Standing } from "../answer/shownAnswer.ts";
import type { JobEditor } from "../editing/jobEditor.ts";
import type { FieldContext } from "../fields/fieldContext.ts";
import type { Jobs } from "../store/jobsDoor.ts";
import { announceWhenSettled } from "./announceWhenSettled.ts";
import { barView } from "./barView.ts";
import { belowAnswer } from "./below/belowAnswer.ts";
import { createTurns } from "./figures/turns.ts";
import type { Graph } from "./graph/graph.ts";
import { hintsAside } from "./hintsAside.ts";
import { type Complaint, complaintView } from "./jobs/complaintView.ts";
import { earlierLook } from "./jobs/earlierLook.ts";
import { fences } from "./jobs/fences.ts";
import { sharedNote } from "./jobs/sharedNote.ts";
import { showEarlier } from "./jobs/showEarlier.ts";
import { showJobs } from "./jobs/showJobs.ts";
import { takeDroppedFiles } from "./jobs/takeDroppedFiles.ts";
import { keepFocus } from "./keepFocus.ts";
import { listenForUndo } from "./listenForUndo.ts";
import { markWaited } from "./markWaited.ts";
import { onceTrue } from "./onceTrue.ts";
import { paperOnPage } from "./paper/paperOnPage.ts";
import { quickStart } from "./start/quickStart.ts";

export interface Notebook {
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
  const { graph, jobEditor, context } = notebook;
  const turns = createTurns((isWaiting) => page.toggleAttribute("data-drawing", isWaiting));
  const spoken = signal("");
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
      <div id="chapters" class="chapters" tabindex="-1" data-place="chapters"></div>
      <section id="paper" class="paper-part" aria-labelledby="paper-title" tabindex="-1" data-place="paper-part"></section>
      <div id="workings" class="workings" tabindex="-1" data-place="workings"></div>
      <p class="unseen" role="status" data-place="status"></p>`,
    page,
  );
  const place = (name: string) => page.querySelector<HTMLElement>(`[data-place="${name}"]`) ?? page;

  const standing = <T>(name: string) => graph.read(name).value as Standing<T>;
  const remembered = rememberAnswer();
  const shown = computed(() =>
    remembered(
      standing("use"),
      standing("runs"),
      standing("inConditions"),
      standing("packUnknowns"),
      standing("chargePlan"),
      standing("costPlan"),
      standing("year"),
      standing("sampled"),
    ),
  );
  const { spoken: answer, band } = fillAnswer(place("answer"), shown, context, graph.retry);
  const title = computed(() => jobEditor.job.value.title);
  effect(() => {
    const state = jobEditor.isLooking.value ? " (an earlier version)" : "";
    document.title = `${title.value}${state} · Bellhousing`;
    place("title").textContent = title.value;
  });
  effect(() => {
    page.toggleAttribute("data-invented", jobEditor.job.value.isInvented);
  });
  markWaited(page, jobEditor.job);
  announceWhenSettled(answer, announce);
  effect(() => {
    page.toggleAttribute("data-for-client", context.view.isForClient.value);
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
  const closeAgain = showEarlier(page, look, attempt);
  page.toggleAttribute("data-shared", notebook.isShared);
  const written = fences(page, WRITTEN);
  const below = { chapters: place("chapters"), workings: place("workings") };
  const fillBelow = belowAnswer(page, below, { graph, context, turns, attempt }, () => {
    closeAgain();
    if (notebook.isShared) written.close();
  });
  keepFocus(page);
  hintsAside(page);
  takeDroppedFiles((files) => {
    const [file] = files;
    // A file that can only be a log goes to the road, wherever on the page it is let go.
    if (files.every(({ name }) => /\.(gpx|nmea|csv|tsv|txt|log|tcx|kml|fit|xml)$/i.test(name))) {
      attempt(() => context.view.staging.log.bring(files));
      void fillBelow().then((filled) => {
        filled?.openFor("theRoad");
        page.querySelector("#theRoad")?.scrollIntoView();
      });
    } else if (file) attempt(() => notebook.jobs.importFile(file));
  });

  const found = computed(() => {
    const { measureFirst } = shown.value.answer ?? { measureFirst: [] };
    return { answer: answer.value, doubt: band.value, measureFirst, failure: shown.value.failure };
  });
  const start = notebook.isShared ? undefined : quickStart(place("first"), context, found);
  if (!start) render(sharedNote(), place("first"));
  const newJob = () =>
    attempt(async () => {
      if (!start) return;
      const { ownCar } = await start.fetch();
      await notebook.jobs.create(ownCar(), "the usual values");
      start.begin();
    });
  const isSettled = () => shown.value.late === "none" && shown.value.isSampled === true;
  const paper = paperOnPage(page, place("paper-part"), {
    graph,
    job: jobEditor.job,
    answer: () => (shown.value.late === "none" ? shown.value.answer : undefined),
    isSettled,
    settled: () => onceTrue(() => isSettled() || shown.value.failure !== undefined),
    chosen: () => context.view.packIndex.value,
    change: () =>
      notebook.isShared || jobEditor.isLooking.value
        ? undefined
        : (what, how) => void jobEditor.change(what, ({ job, drafts }) => ({ job: how(job), drafts })),
    openWorkings: async () => {
      const filled = await fillBelow();
      await filled?.openAll();
      return filled !== undefined;
    },
  });
  const share = () => attempt(() => notebook.jobs.share());
  effect(() => {
    render(
      barView({ jobEditor, context, announce, newJob, share, print: paper.print, isShared: notebook.isShared }),
      place("tools"),
    );
  });

  // What the answer does without is fetched once it stands, and then so that the page goes on without its server.
  const stop = effect(() => {
    const { answer: first, failure } = shown.value;
    if (first || failure !== undefined) setTimeout(fetchRest);
  });
  addEventListener("hashchange", () => void fillBelow());
  async function fetchRest() {
    stop();
    await fillBelow();
    await Promise.allSettled([start?.fetch(), paper.fetch()]);
  }
  function announce(words: string) {
    spoken.value = words;
  }
  listenForUndo(jobEditor, announce);
}
