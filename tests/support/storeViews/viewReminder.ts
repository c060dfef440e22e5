import { html, nothing, type TemplateResult } from "lit-html";
import { type Reminder, reminderSentence } from "../../../web/store/fileReminder.ts";
import { type Place, placeSentence } from "../../../web/store/saveStatus.ts";
import { type TieState, tieSentence } from "../../../web/store/tiedFile.ts";
import { clockWords } from "./dateWords.ts";
import { viewButton } from "./viewButton.ts";

/** What can be done about copies on disk. */
export interface FileChoices {
  onSaveFile(): void;
  onTie(): void;
  onUntie(): void;
  onAllow(): void;
  onOverwrite(): void;
}

/** The reminder that the last file copy is old; empty while it is not. */
export function viewReminder(reminder: Reminder | undefined, onSaveFile: () => void): TemplateResult {
  return html`<div class="file-reminder" role="status">
    ${
      reminder === undefined
        ? nothing
        : html`<p>${reminderSentence(reminder)}</p>
          ${viewButton("Save as a file", onSaveFile)}`
    }
  </div>`;
}

/** Where jobs live, and the file this one is tied to or could be. */
export function viewSafekeeping(place: Place, tie: TieState, canTie: boolean, choices: FileChoices): TemplateResult {
  return html`<div class="safekeeping">
    <p>${placeSentence(place)}</p>
    ${canTie || tie.kind !== "none" ? html`<p role="status">${tieSentence(tie, clockWords)}</p>` : nothing}
    <div class="buttons">
      ${viewButton("Save as a file", choices.onSaveFile)}
      ${tie.kind === "none" && canTie ? viewButton("Tie to a file and save it along", choices.onTie) : nothing}
      ${tie.kind === "asks" ? viewButton("Allow writing to it", choices.onAllow) : nothing}
      ${tie.kind === "changedOutside" ? viewButton("Write over it", choices.onOverwrite) : nothing}
      ${tie.kind === "none" ? nothing : viewButton("Let go of the file", choices.onUntie)}
    </div>
  </div>`;
}
