import { html, nothing, type TemplateResult } from "lit-html";
import type { JobHead } from "../../store/jobRecord.ts";
import type { JobsPlace } from "./jobsPlace.ts";
import { clock, day } from "./moments.ts";

/** One job of the list, with what can be done with it. */
export function jobRow(here: JobsPlace, head: JobHead): TemplateResult {
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

/** One job that was deleted and can be brought back. */
export function removedRow({ jobs, attempt }: JobsPlace, { id, title, line }: JobHead): TemplateResult {
  return html`<li>
    <p><strong>${title}</strong> <span class="aside">${line}</span></p>
    <p class="buttons">
      <button type="button" @click=${() => attempt(() => jobs.undoRemove(id))}>
        Bring it back<span class="unseen"> ${title}</span>
      </button>
    </p>
  </li>`;
}
