import { html, nothing, type TemplateResult } from "lit-html";
import { atPath } from "../../shared/job/path.ts";
import type { Field } from "../editing/fieldTable/fieldList.ts";
import type { Editing } from "./fieldContext.ts";
import { fieldIds, says } from "./fieldParts.ts";

/** A field for one of a few things. */
export function choiceField(context: Editing, path: string, field: Extract<Field, { type: "choice" }>): TemplateResult {
  const { jobEditor } = context;
  const ids = fieldIds(path, context.idPrefix);
  const value = atPath(jobEditor.job.value, path);
  const draft = jobEditor.drafts.value[path];
  const choose = (event: Event) => {
    jobEditor.editPlain(path, (event.target as HTMLSelectElement).value, field.label);
    jobEditor.settle();
  };
  return html`<div class="field ${draft ? "is-wrong" : ""}">
    <label for=${ids.input}>${field.label}</label>
    <span class="entry">
      <select id=${ids.input} aria-describedby="${ids.says} ${ids.hint}" aria-invalid=${draft ? "true" : "false"} @change=${choose}>
        ${value === undefined && !draft ? html`<option value="" selected>not said</option>` : nothing}
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
