import { computed, effect, type ReadonlySignal, type Signal, signal } from "@preact/signals-core";
import { html, nothing, render } from "lit-html";
import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../shared/job/job.ts";
import type { Answer, ChargePlan, CurrentsPlan, DriveReport, Trace } from "../../../sim/index.ts";
import { reloadView } from "../../look/reloadView.ts";
import { keptPart } from "../../worker/keptPart.ts";
import type { Graph, Reading } from "../graph/graph.ts";

/** What can be printed of a job. */
const papers = {
  client: "Client sheet",
  visit: "Visit form, blank",
  settings: "Settings sheet",
  handover: "Handover page",
  service: "Service card",
  workings: "The workings",
} as const;
type Paper = keyof typeof papers;

export interface PaperSetting {
  readonly graph: Graph;
  readonly job: ReadonlySignal<Job>;
  /** The answer once it is of what is in the job now. */
  readonly answer: () => Answer | undefined;
  /** Its verdict will not be another one: only then is it frozen. */
  readonly isSettled: () => boolean;
  /** Is over once that is so, or where it does not come. */
  readonly settled: () => Promise<void>;
  /** The pack that was chosen, if not the one recommended. */
  readonly chosen: () => number | undefined;
  /** Opens all workings, so that they are drawn before they are printed; whether they could be. */
  readonly openWorkings: () => Promise<boolean>;
  readonly now?: () => Date;
  /** Changes the job as a step that Undo takes back; absent where the page is only looked at. */
  readonly change?: () => ((what: string, how: (job: Job) => Job) => void) | undefined;
}

type Sheets = typeof import("./sheets.ts");

/** What is printed of a job. */
export interface PaperOnPage {
  /** Fetches what draws the papers, so that a printer asked for later need not wait for it; rejects where it cannot be had. */
  fetch(): Promise<unknown>;
  /** Prints the chosen paper once all that it needs is there. */
  print(): void;
}

/** Keeps what is printed ready in `place`: a choice of papers, a preview, and the paper itself, which is all that the printer gets. */
export function paperOnPage(page: HTMLElement, place: HTMLElement, setting: PaperSetting): PaperOnPage {
  const paper = signal<Paper>("client");
  const isShown = signal(false);
  render(html`<div data-place="choice"></div><div class="paper" data-place="paper"></div>`, place);
  const [choice, sheetPlace] = place.children as unknown as [HTMLElement, HTMLElement];
  const { part: sheets, missing, fetch } = keptPart(() => import("./sheets.ts"));

  const isReady = () => {
    if (paper.peek() === "workings") return setting.openWorkings();
    // A form to fill in has nothing of the answer.
    const waited = paper.peek() === "visit" || paper.peek() === "service" ? undefined : setting.settled();
    return Promise.all([fetch(), waited]).then(
      () => true,
      () => false,
    );
  };
  const print = async () => {
    if (await isReady()) window.print();
    else place.scrollIntoView(); // it says why there
  };
  effect(() => {
    page.dataset["paper"] = paper.value;
    render(
      html`${choiceView(paper, isShown, print)}${missing.value === undefined ? nothing : reloadView(missing.value)}
        ${paper.value === "client" ? predictionOf(sheets.value, setting) : nothing}`,
      choice,
    );
  });
  const drawn = computed(() => paperOf(paper.value, sheets.value, setting));
  const draw = () => {
    const found = drawn.peek();
    sheetPlace.replaceChildren(typeof found === "string" ? document.createTextNode(found) : found());
  };
  let isDue = false;
  effect(() => {
    sheetPlace.toggleAttribute("data-shown", isShown.value);
    if (!isShown.value) {
      sheetPlace.replaceChildren(); // what is not seen would stay when another job is opened
      return;
    }
    fetch().catch(() => {}); // said beside the choice of papers
    drawn.value;
    if (isDue) return;
    // Once the change is through: until then the job may be the next one, and the answer still that of the one before.
    isDue = true;
    queueMicrotask(() => {
      isDue = false;
      if (isShown.peek()) draw();
    });
  });
  addEventListener("beforeprint", draw);
  addEventListener("afterprint", () => {
    if (!isShown.peek()) sheetPlace.replaceChildren();
  });
  return { fetch, print: () => void print() };
}

function choiceView(paper: Signal<Paper>, isShown: Signal<boolean>, print: () => void) {
  return html`<h2 id="paper-title">Paper</h2>
    <p class="aside">One page with the answer, one with what it assumes; nothing on it says where anybody lives.</p>
    <p class="buttons paper-tools">
      <label>
        Print
        <select
          @change=${(event: Event) => {
            paper.value = (event.target as HTMLSelectElement).value as Paper;
          }}
        >
          ${Object.entries(papers).map(
            ([key, words]) => html`<option value=${key} .selected=${paper.value === key}>${words}</option>`,
          )}
        </select>
      </label>
      ${
        paper.value === "workings"
          ? nothing
          : html`<button
              type="button"
              aria-expanded=${isShown.value ? "true" : "false"}
              @click=${() => {
                isShown.value = !isShown.value;
              }}
            >
              ${isShown.value ? "Close the preview" : "Preview"}
            </button>`
      }
      <button type="button" @click=${print}>Print it</button>
    </p>`;
}

/** What is frozen of the job, and the press that freezes it, once they are fetched. */
function predictionOf(sheets: Sheets | undefined, { graph, job, answer, isSettled, change, now }: PaperSetting) {
  if (!sheets) return nothing;
  const [found, runs] = [isSettled() ? answer() : undefined, ready<DriveReport>(graph, "runs")];
  const isOfJob = runs?.candidates.length === job.value.packs.length && runs.trace.id === drivenRoad(job.value).id;
  const reports = found && runs && isOfJob ? { runs, answer: found } : undefined;
  return sheets.predictionView({ job: job.value, reports, change: change?.(), now: now ?? (() => new Date()) });
}

/** How the paper is drawn, or a sentence that says why it cannot be yet. */
function paperOf(paper: Paper, sheets: Sheets | undefined, setting: PaperSetting): string | (() => HTMLElement) {
  if (paper === "workings") return "";
  if (!sheets) return "Loading the sheet …";
  const job = setting.job.value;
  const { units } = job;
  if (paper === "visit") return () => sheets.inStyle(document, sheets.visitForm(document, units));
  if (paper === "service") return () => sheets.inStyle(document, sheets.serviceCard(document, job));
  const answer = setting.answer();
  const runs = ready<DriveReport>(setting.graph, "runs");
  // Where another job is opened, its packs are here before its runs, and a sheet of both would be of neither.
  const isOfJob = runs?.candidates.length === job.packs.length;
  if (!answer || !runs || !isOfJob)
    return "The packs are still being driven; the sheet follows when the answer is there.";
  const chosen = setting.chosen() ?? answer.recommended;
  if (paper === "handover")
    return () => sheets.inStyle(document, sheets.handoverPage(document, job, chosen ?? 0, units));
  if (paper === "settings") return settingsOf(sheets, job, answer, setting);
  const { profile } = ready<Trace>(setting.graph, "road") ?? {};
  return () => {
    const date = setting.now?.() ?? new Date();
    // With the winters as driven, as the answer beside it has them.
    const candidates = ready<DriveReport["candidates"]>(setting.graph, "judged") ?? runs.candidates;
    const content = sheets.sheetContent({ job, runs: { ...runs, candidates }, answer, profile, chosen, units, date });
    return sheets.inStyle(document, sheets.clientSheet(document, content, answer, units));
  };
}

/** The settings sheet, for the pack that the currents are of. */
function settingsOf(sheets: Sheets, job: Job, answer: Answer, { graph }: PaperSetting): string | (() => HTMLElement) {
  const currents = ready<CurrentsPlan>(graph, "currentsPlan");
  const charging = ready<ChargePlan>(graph, "chargePlan");
  const index = job.packs.findIndex(({ name }) => name === currents?.pack);
  if (!currents || !charging || index < 0) return "The currents are still being calculated; the sheet follows.";
  const sheet = sheets.settingsSheet(job, index, currents, charging);
  const stop = answer.packs[index]?.stop?.sentence;
  return () => sheets.inStyle(document, sheets.settingsPaper(document, { job, sheet, stop, units: job.units }));
}

function ready<T>(graph: Graph, name: string): T | undefined {
  const reading = graph.read(name).value as Reading<T>;
  return reading.state === "ready" ? reading.value : undefined;
}
