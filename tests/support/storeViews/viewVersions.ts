import { html, nothing, type TemplateResult } from "lit-html";
import type { Difference } from "../../../web/store/jobDiff.ts";
import type { JobVersion } from "../../../web/store/jobsDoor.ts";
import { valueWords } from "../../../web/store/valueWords.ts";
import { dateWords } from "./dateWords.ts";
import { viewButton } from "./viewButton.ts";

/** What can be done with a version, by its number. */
export interface VersionChoices {
  onLook(number: number): void;
  onRestore(number: number): void;
  onCompare(number: number): void;
}

/** The states of a job, newest first, each with when it ended and why it came about. */
export function viewVersions(versions: readonly JobVersion[], choices: VersionChoices): TemplateResult {
  return html`<ol class="versions" reversed>
    ${versions.map(
      ({ number, endedAt_ms, reason, edits, isPresent }) => html`<li value=${number}>
        <p>
          <strong>${isPresent ? "As it is now" : dateWords(endedAt_ms)}</strong>: ${reason}${edits > 1 ? `, the last of ${edits} edits` : nothing}.
        </p>
        ${
          isPresent
            ? nothing
            : html`<div class="buttons">
                ${viewButton("Look at it", () => choices.onLook(number), `version ${number}`)}
                ${viewButton("Compare with now", () => choices.onCompare(number), `version ${number}`)}
                ${viewButton("Go back to it", () => choices.onRestore(number), `version ${number}`)}
              </div>`
        }
      </li>`,
    )}
  </ol>`;
}

/** Two states side by side, one row for each place where they differ. `words` gives a place in the words of its field. */
export function viewDifferences(
  differences: readonly Difference[],
  titles: { readonly before: string; readonly after: string },
  words: (difference: Difference) => string = ({ place }) => place,
): TemplateResult {
  if (differences.length === 0)
    return html`<p class="differences">${titles.before} and ${titles.after} hold the same.</p>`;
  const count = differences.length === 1 ? "One difference" : `${differences.length} differences`;
  return html`<div class="differences" role="region" tabindex="0" aria-label="Differences">
    <table>
      <caption>
        ${count} between ${titles.before} and ${titles.after}
      </caption>
      <thead>
        <tr>
          <th scope="col">Where</th>
          <th scope="col">${titles.before}</th>
          <th scope="col">${titles.after}</th>
        </tr>
      </thead>
      <tbody>
        ${differences.map(
          (difference) => html`<tr>
            <th scope="row">${words(difference)}</th>
            <td>${valueWords(difference.before)}</td>
            <td>${valueWords(difference.after)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
