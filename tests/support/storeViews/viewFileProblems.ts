import { html, nothing, type TemplateResult } from "lit-html";
import type { Problem } from "../../../shared/problems.ts";
import { viewButton } from "./viewButton.ts";

/** A file that could not be taken in. */
export interface RefusedFile {
  readonly name: string;
  readonly problems: readonly Problem[];
}

/** Everything that is wrong with a file, in its own order, and that nothing here was changed by it. */
export function viewFileProblems(refused: RefusedFile | undefined, onDismiss: () => void): TemplateResult {
  return html`<div class="file-problems-place" role="alert">
    ${
      refused === undefined
        ? nothing
        : html`<section class="file-problems" aria-label="A file that could not be read">
            <p>
              ${refused.name} was not taken in:
              ${refused.problems.length === 1 ? "one thing is" : `${refused.problems.length} things are`} wrong with it.
              Nothing here was changed.
            </p>
            <ul>
              ${refused.problems.map(({ where, message }) => html`<li><code>${where}</code>: ${message}</li>`)}
            </ul>
            ${viewButton("Close", onDismiss, "these problems")}
          </section>`
    }
  </div>`;
}
