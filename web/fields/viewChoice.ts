import { html, type TemplateResult } from "lit-html";

/** A choice of what to look at; it is no part of the job and changes no result. */
export function viewChoice(
  id: string,
  label: string,
  choices: readonly { readonly key: string; readonly words: string }[],
  chosen: string,
  choose: (key: string) => void,
): TemplateResult {
  return html`<div class="field is-words">
      <label for=${id}>${label}</label>
      <span class="entry">
        <select id=${id} @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
          ${choices.map(({ key, words }) => html`<option value=${key} .selected=${key === chosen}>${words}</option>`)}
        </select>
      </span>
      <span class="as-printed">${choices.find(({ key }) => key === chosen)?.words ?? ""}</span>
    </div>`;
}
