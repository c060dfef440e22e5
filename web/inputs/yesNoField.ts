import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { atPath } from "../notebook/atPath.ts";
import type { Field } from "./fieldList.ts";
import { fieldIds } from "./fieldParts.ts";
import type { Paper } from "./form.ts";

/** A field for yes or no. */
export function yesNoField(paper: Paper, path: string, field: Extract<Field, { type: "yesNo" }>): TemplateResult {
  const { desk } = paper;
  const ids = fieldIds(path, paper.idPrefix);
  const value = atPath(desk.job.value, path) === true;
  const change = (event: Event) => {
    desk.editPlain(path, (event.target as HTMLInputElement).checked, field.label);
    desk.settle();
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
