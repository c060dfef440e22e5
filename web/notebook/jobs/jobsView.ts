import { html, nothing, type TemplateResult } from "lit-html";
import { readJob } from "../../../shared/job/readJob.ts";
import { placeSentence } from "../../store/saveStatus.ts";
import { comparedView } from "./comparedView.ts";
import { jobRow, removedRow } from "./jobRow.ts";
import type { JobsPlace } from "./jobsPlace.ts";
import { linkButtons } from "./linkButtons.ts";
import { versionsView } from "./versionsView.ts";

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
  return html`<details class="jobs" @toggle=${here.askDemos}>
    <summary><span class="wide">Jobs</span><span class="narrow">Menu</span></summary>
    <div class="jobs-body">
      <p class="buttons">
        <button type="button" @click=${() => attempt(() => jobs.exportFile())}>Save this job as a file</button>
        <span class="file">
          <input id="job-file" type="file" accept=".json,application/json" @change=${pick} />
          <label for="job-file">Open a job from a file</label>
        </span>
        ${jobs.canLinkFile ? linkButtons(here) : nothing}
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
          : html`<details><summary>Archived (${archived.length})</summary>
            <ul class="job-list">${archived.map((head) => jobRow(here, head))}</ul></details>`
      }
      ${
        removed.length === 0
          ? nothing
          : html`<details><summary>Deleted, and not yet gone (${removed.length})</summary>
            <ul class="job-list">${removed.map((head) => removedRow(here, head))}</ul></details>`
      }
      <p class="buttons">
        ${here.demos.map(
          ({ title, document }) =>
            html`<button type="button" @click=${() => attempt(() => jobs.create(readJob(document), "the demo"))}>
              Example: ${title}
            </button>`,
        )}
      </p>
      <details @toggle=${(event: Event) => (event.target as HTMLDetailsElement).open && here.askVersions()}>
        <summary>Earlier versions of this job</summary>
        ${versionsView(here)}
      </details>
      ${here.compared ? comparedView(here.compared, here.units) : nothing}
    </div>
  </details>`;
}
