import { html, nothing, type TemplateResult } from "lit-html";
import type { JobHead } from "../../store/database/jobRecord.ts";
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
      ${isHere ? nothing : button("Open", () => here.open(id))}
      ${isHere ? nothing : button("Compare", () => here.compare(title, { id }))}
      ${button("Copy", () => attempt(() => jobs.duplicate(id)))}
      ${
        shelf === "open"
          ? button("Archive", () => attempt(() => jobs.archive(id)))
          : button("Restore", () => attempt(() => jobs.unarchive(id)))
      }
      ${isHere ? nothing : button("Save as a file", () => attempt(() => jobs.exportFile(id)))}
      ${button("Delete", () => remove(id))}
    </p>
    ${here.unopened?.id === id ? textView(here.unopened.text) : nothing}
  </li>`;
}

/** Letters of a stored text that are shown; all of it goes into a file. */
const MOST_SHOWN = 100_000;

/** A job that no reader takes any more, as it is stored: nothing of it is lost while it can be read and saved. */
function textView(text: string): TemplateResult {
  return html`<div class="stored-text">
    <p>This job is stored whole but could not be opened. This is what is stored; “Save as a file” keeps all of it.</p>
    <pre tabindex="0">${text.slice(0, MOST_SHOWN)}${text.length > MOST_SHOWN ? "\n…" : ""}</pre>
  </div>`;
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
