import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { atPath } from "../../shared/job/path.ts";
import type { Field } from "../editing/fieldTable/fieldList.ts";
import type { Editing } from "./fieldContext.ts";
import { fieldIds } from "./fieldParts.ts";

/** A field for yes or no. */
export function yesNoField(context: Editing, path: string, field: Extract<Field, { type: "yesNo" }>): TemplateResult {
  const { jobEditor } = context;
  const ids = fieldIds(path, context.idPrefix);
  const value = atPath(jobEditor.job.value, path) === true;
  const change = (event: Event) => {
    jobEditor.editPlain(path, (event.target as HTMLInputElement).checked, field.label);
    jobEditor.settle();
  };
  return html`<div class="field is-yes-no" data-label=${field.label}>
    <span class="entry">
      <input id=${ids.input} type="checkbox" .checked=${live(value)} aria-describedby=${ids.hint} @change=${change} />
      <label for=${ids.input}>${field.label}</label>
    </span>
    <p class="hint" id=${ids.hint}>${field.help ?? nothing}</p>
    <span class="as-printed">${value ? "yes" : "no"}</span>
  </div>`;
}
