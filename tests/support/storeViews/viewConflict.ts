import { html, nothing, type TemplateResult } from "lit-html";
import type { Conflict } from "../../../web/store/openJob.ts";
import { clockWords } from "./dateWords.ts";
import { viewButton } from "./viewButton.ts";

/** What to do about it when two tabs changed one job. */
export interface ConflictChoice {
  onKeepMine(): void;
  onTakeTheirs(): void;
}

/** The choice between two states of a job. Both are stored by now, so neither answer loses anything. */
export function viewConflict(
  conflict: Conflict | undefined,
  { onKeepMine, onTakeTheirs }: ConflictChoice,
): TemplateResult {
  return html`<div class="conflict-place" role="alert">
    ${conflict === undefined ? nothing : viewChoice(conflict, onKeepMine, onTakeTheirs)}
  </div>`;
}

function viewChoice({ kind, theirs }: Conflict, onKeepMine: () => void, onTakeTheirs: () => void): TemplateResult {
  const what =
    kind === "removed"
      ? `Another tab deleted “${theirs.title}” while it was edited here.`
      : `Another tab changed “${theirs.title}” at ${clockWords(theirs.changedAt_ms)} (${theirs.version.reason}) while it was edited here.`;
  return html`<section class="conflict" aria-label="Two tabs changed this job">
    <p>${what} Nothing was written over: what this tab holds is saved as a copy of its own.</p>
    <div class="buttons">
      ${viewButton("Keep mine as a copy", onKeepMine)}
      ${viewButton(kind === "removed" ? "Let it be deleted" : "Take theirs", onTakeTheirs)}
    </div>
  </section>`;
}
