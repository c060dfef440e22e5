import { html, nothing, type TemplateResult } from "lit-html";
import { atPath } from "../notebook/atPath.ts";
import type { Field } from "./fieldList.ts";
import { fieldIds, says } from "./fieldParts.ts";
import type { Paper } from "./form.ts";

/** A field for one of a few things. */
export function choiceField(paper: Paper, path: string, field: Extract<Field, { type: "choice" }>): TemplateResult {
  const { desk } = paper;
  const ids = fieldIds(path, paper.idPrefix);
  const value = atPath(desk.job.value, path);
  const draft = desk.drafts.value[path];
  const choose = (event: Event) => {
    desk.editPlain(path, (event.target as HTMLSelectElement).value, field.label);
    desk.settle();
  };
  return html`<div class="field ${draft ? "is-wrong" : ""}">
    <label for=${ids.input}>${field.label}</label>
    <span class="entry">
      <select id=${ids.input} aria-describedby="${ids.says} ${ids.hint}" aria-invalid=${draft ? "true" : "false"} @change=${choose}>
        ${Object.entries(field.choices).map(
          ([key, words]) => html`<option value=${key} .selected=${(draft?.typed ?? value) === key}>${words}</option>`,
        )}
      </select>
    </span>
    ${says(ids, draft?.problem, [], field.choices[String(value)])}
    <p class="hint" id=${ids.hint}>${field.help ?? nothing}</p>
    <span class="as-printed">${field.choices[String(value)] ?? ""}</span>
  </div>`;
}
