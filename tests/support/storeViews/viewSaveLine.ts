import { html, nothing, type TemplateResult } from "lit-html";
import { type Place, type SaveStatus, statusSentence } from "../../../web/store/saveStatus.ts";
import { clockWords } from "./dateWords.ts";
import { viewButton } from "./viewButton.ts";

/** The line that says whether what was typed is stored. A refusal is an alarm and brings the way out with it. */
export function viewSaveLine(status: SaveStatus, place: Place, onSaveFile: () => void): TemplateResult {
  const sentence = statusSentence(status, place, clockWords);
  const isRefused = status.kind === "refused";
  return html`<div class="save-line ${isRefused ? "is-refused" : ""}">
    <p role="status">${isRefused ? nothing : sentence}</p>
    <div role="alert">
      ${
        isRefused
          ? html`<p>${sentence}</p>
            <p class="said">The browser says: ${status.message}</p>`
          : nothing
      }
    </div>
    ${isRefused || place.kind === "memory" ? viewButton("Save as a file", onSaveFile) : nothing}
  </div>`;
}
