import { html, nothing, type TemplateResult } from "lit-html";
import { demos } from "../../shared/demos/index.ts";
import { readJob } from "../../shared/job/readJob.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { reminderSentence } from "../store/fileReminder.ts";
import type { Difference } from "../store/jobDiff.ts";
import type { JobHead } from "../store/jobRecord.ts";
import type { Comparable, Jobs, JobVersion } from "../store/jobs.ts";
import { placeSentence, statusSentence } from "../store/saveStatus.ts";
import { tieSentence } from "../store/tiedFile.ts";
import { comparedView } from "./comparedView.ts";

export interface Compared {
  readonly title: string;
  readonly differences: readonly Difference[];
}

export interface JobsPlace {
  readonly jobs: Jobs;
  /** Past states of the open job, once they were asked for. */
  readonly versions: readonly JobVersion[] | undefined;
  askVersions(): void;
  /** Does something that may fail; what failed is said on the page. */
  attempt(work: () => Promise<unknown>): void;
  readonly removedLast: string | undefined;
  /** Two states of jobs side by side, once that was asked for. */
  readonly compared: Compared | undefined;
  compare(title: string, before: Comparable): void;
  readonly units: UnitHabit;
  remove(id: string): void;
}

const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" });
const hour = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit" });
const clock = (at_ms: number) => hour.format(at_ms);

/** The line that says whether the job is saved, and what else the person must know about it right now. */
export function keepingView({ jobs, attempt }: JobsPlace): TemplateResult {
  const { status, place, conflict, reminder, news } = jobs;
  const isBad = status.value.kind === "refused" || place.value.kind === "memory";
  const clash = conflict.value;
  return html`<div class="keeping" role="status">
    <p class=${isBad ? "is-bad" : ""}>${statusSentence(status.value, place.value, clock)}</p>
    ${reminder.value ? html`<p>${reminderSentence(reminder.value)}</p>` : nothing}
    ${
      news.value === undefined
        ? nothing
        : html`<p class="news">
          ${news.value} <button type="button" @click=${() => jobs.dismissNews()}>Seen</button>
        </p>`
    }
    ${
      clash === undefined
        ? nothing
        : html`<div class="news">
          <p>
            ${
              clash.kind === "changed"
                ? "Another tab changed this job while you did. What you have here is kept as a copy. Which will you go on with?"
                : "Another tab deleted this job. What you have here is kept as a copy. Which will you go on with?"
            }
          </p>
          <p class="buttons">
            <button type="button" @click=${() => jobs.keepMine()}>My copy, here</button>
            <button type="button" @click=${() => attempt(() => jobs.takeTheirs())}>What the other tab has</button>
          </p>
        </div>`
    }
  </div>`;
}

/** All jobs in this browser, with what can be done with them. */
export function jobsView(here: JobsPlace): TemplateResult {
  const { jobs, attempt } = here;
  const open = jobs.list.value.filter(({ shelf }) => shelf === "open");
  const archived = jobs.list.value.filter(({ shelf }) => shelf === "archived");
  const removed = jobs.list.value.filter(({ shelf }) => shelf === "removed");
  const pick = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = "";
    if (file) attempt(() => jobs.importFile(file));
  };
  return html`<details class="jobs">
    <summary>Jobs and files</summary>
    <div class="jobs-body">
      <p class="buttons">
        <button type="button" @click=${() => attempt(() => jobs.exportFile())}>Save this job as a file</button>
        <span class="file">
          <input id="job-file" type="file" accept=".json,application/json" @change=${pick} />
          <label for="job-file">Open a job from a file</label>
        </span>
        ${jobs.canTie ? tieButtons(here) : nothing}
      </p>
      <p class="aside">${placeSentence(jobs.place.value)} A job file dropped on the page opens too.</p>
      <ul class="job-list">
        ${open.map((head) => jobRow(here, head))}
      </ul>
      ${
        here.removedLast === undefined
          ? nothing
          : html`<p>
            One job was deleted.
            <button type="button" @click=${() => attempt(() => jobs.undoRemove())}>Bring it back</button>
          </p>`
      }
      ${
        archived.length === 0
          ? nothing
          : html`<details><summary>Put away (${archived.length})</summary>
            <ul class="job-list">${archived.map((head) => jobRow(here, head))}</ul></details>`
      }
      ${
        removed.length === 0
          ? nothing
          : html`<details><summary>Deleted, and not yet gone (${removed.length})</summary>
            <ul class="job-list">${removed.map((head) => removedRow(here, head))}</ul></details>`
      }
      <p class="buttons">
        ${demos.map(
          ({ title, document }) =>
            html`<button type="button" @click=${() => attempt(() => jobs.create(readJob(document), "the demo"))}>
              Start from the invented job: ${title}
            </button>`,
        )}
      </p>
      <details @toggle=${(event: Event) => (event.target as HTMLDetailsElement).open && here.askVersions()}>
        <summary>Earlier states of this job</summary>
        ${versionList(here)}
      </details>
      ${here.compared ? comparedView(here.compared, here.units) : nothing}
    </div>
  </details>`;
}

function tieButtons({ jobs, attempt }: JobsPlace): TemplateResult {
  const tie = jobs.tie.value;
  const button = (words: string, work: () => Promise<void>) =>
    html`<button type="button" @click=${() => attempt(work)}>${words}</button>`;
  return html`${tie.kind === "none" ? button("Save along to a file", () => jobs.tieToFile()) : nothing}
    ${tie.kind === "asks" ? button("Allow the file again", () => jobs.allowFile()) : nothing}
    ${tie.kind === "changedOutside" ? button("Write over it", () => jobs.overwriteFile()) : nothing}
    ${tie.kind === "none" ? nothing : button("Untie the file", () => jobs.untieFile())}
    ${tie.kind === "none" ? nothing : html`<span class="aside">${tieSentence(tie, clock)}</span>`}`;
}

function jobRow(here: JobsPlace, head: JobHead): TemplateResult {
  const { jobs, attempt, remove } = here;
  const { id, title, line, note, changedAt_ms, shelf } = head;
  const isHere = jobs.current.value?.id === id;
  const button = (words: string, work: () => void) =>
    html`<button type="button" @click=${work}>${words}<span class="unseen"> ${title}</span></button>`;
  return html`<li>
    <p>
      <strong>${title}</strong>${isHere ? " (open here)" : nothing}
      <span class="aside">${day.format(changedAt_ms)}, ${clock(changedAt_ms)}. ${line}${note ? `; ${note}` : ""}</span>
    </p>
    <p class="buttons">
      ${isHere ? nothing : button("Open", () => attempt(() => jobs.open(id)))}
      ${isHere ? nothing : button("Compare", () => here.compare(title, { id }))}
      ${button("Copy", () => attempt(() => jobs.duplicate(id)))}
      ${
        shelf === "open"
          ? button("Put away", () => attempt(() => jobs.archive(id)))
          : button("Take out again", () => attempt(() => jobs.unarchive(id)))
      }
      ${button("Delete", () => remove(id))}
    </p>
  </li>`;
}

function removedRow({ jobs, attempt }: JobsPlace, { id, title, line }: JobHead): TemplateResult {
  return html`<li>
    <p><strong>${title}</strong> <span class="aside">${line}</span></p>
    <p class="buttons">
      <button type="button" @click=${() => attempt(() => jobs.undoRemove(id))}>
        Bring it back<span class="unseen"> ${title}</span>
      </button>
    </p>
  </li>`;
}

function versionList({ jobs, versions, attempt, compare }: JobsPlace): TemplateResult {
  const id = jobs.current.value?.id;
  if (!versions || id === undefined) return html`<p class="aside">Being fetched …</p>`;
  return html`<ol class="job-list" reversed>
    ${versions.map(
      ({ number, endedAt_ms, reason, isPresent }) =>
        html`<li>
          <p>
            ${reason} <span class="aside">${day.format(endedAt_ms)}, ${clock(endedAt_ms)}${isPresent ? ", now" : ""}</span>
          </p>
          ${
            isPresent
              ? nothing
              : html`<p class="buttons">
                <button type="button" @click=${() => compare(reason, { id, version: number })}>
                  Compare<span class="unseen">: ${reason}</span>
                </button>
                <button type="button" @click=${() => attempt(() => jobs.restore(id, number))}>
                  Go back to this<span class="unseen">: ${reason}</span>
                </button>
              </p>`
          }
        </li>`,
    )}
  </ol>`;
}
