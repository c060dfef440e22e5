import { html, nothing, type TemplateResult } from "lit-html";
import { repeat } from "lit-html/directives/repeat.js";
import type { JobHead, Shelf } from "../../../web/store/jobRecord.ts";
import { dateWords } from "./dateWords.ts";
import { viewButton } from "./viewButton.ts";

/** What can be done with a job in the list, by its id. */
export interface JobListChoices {
  onOpen(id: string): void;
  onDuplicate(id: string): void;
  onArchive(id: string): void;
  onUnarchive(id: string): void;
  onRemove(id: string): void;
  onUndoRemove(id: string): void;
  onSaveFile(id: string): void;
  onReadFile(file: File): void;
}

/** All jobs of this browser by where they stand, each with its date and line; deleted ones can be brought back. */
export function viewJobList(
  heads: readonly JobHead[],
  currentId: string | undefined,
  choices: JobListChoices,
): TemplateResult {
  const on = (shelf: Shelf) => heads.filter((head) => head.shelf === shelf);
  const list = (those: readonly JobHead[]) =>
    html`<ul class="jobs">
      ${repeat(
        those,
        ({ id }) => id,
        (head) => viewJob(head, head.id === currentId, choices),
      )}
    </ul>`;
  const folded = (words: string, those: readonly JobHead[]) =>
    those.length === 0
      ? nothing
      : html`<details>
          <summary>${words} (${those.length})</summary>
          ${list(those)}
        </details>`;
  return html`<div class="job-list" tabindex="-1">
    ${on("open").length === 0 ? html`<p>No job is open to work on in this browser.</p>` : list(on("open"))}
    ${folded("Archived", on("archived"))} ${folded("Deleted, kept for thirty days", on("removed"))}
    ${viewFilePicker(choices.onReadFile)}
  </div>`;
}

/** The way in for a saved job file; a file dropped on the page does the same. */
function viewFilePicker(onReadFile: (file: File) => void): TemplateResult {
  const onChange = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = ""; // the same file can then be chosen again after it was mended
    if (file) onReadFile(file);
  };
  return html`<p class="file-picker">
    <label>
      Open a saved job file, or drop it on the page
      <input type="file" accept=".json,application/json" @change=${onChange} />
    </label>
  </p>`;
}

function viewJob(head: JobHead, isCurrent: boolean, choices: JobListChoices): TemplateResult {
  const { id, title, shelf } = head;
  const act = (words: string, does: (id: string) => void) => viewButton(words, () => does(id), title);
  // The button goes with its job to another list; whoever works by keyboard stays at the lists and not at the page's top.
  const move = (words: string, does: (id: string) => void) =>
    viewButton(
      words,
      (event) => {
        if (event.currentTarget instanceof Element) event.currentTarget.closest<HTMLElement>(".job-list")?.focus();
        does(id);
      },
      title,
    );
  return html`<li class="job" aria-current=${isCurrent ? "true" : nothing}>
    <p class="job-title"><strong>${title}</strong>${isCurrent ? " (open here)" : nothing}</p>
    <p class="job-line">${head.line}</p>
    ${head.note === undefined ? nothing : html`<p class="job-note">${head.note}</p>`}
    <p class="job-date">
      Changed ${dateWords(head.changedAt_ms)}: ${head.version.reason}.
      ${head.file === undefined ? "No copy as a file." : `File copy of ${dateWords(head.file.savedAt_ms)}.`}
    </p>
    <div class="buttons">
      ${shelf === "removed" ? move("Bring back", choices.onUndoRemove) : nothing}
      ${shelf !== "removed" && !isCurrent ? act("Open", choices.onOpen) : nothing}
      ${shelf === "removed" ? nothing : act("Duplicate", choices.onDuplicate)}
      ${shelf === "open" ? move("Archive", choices.onArchive) : nothing}
      ${shelf === "archived" ? move("Take out of the archive", choices.onUnarchive) : nothing}
      ${act("Save as a file", choices.onSaveFile)}
      ${shelf === "removed" ? nothing : move("Delete", choices.onRemove)}
    </div>
  </li>`;
}
