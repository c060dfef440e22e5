import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../shared/job/job.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { explanations } from "../../sim/index.ts";
import { fieldIds } from "../inputs/fieldParts.ts";
import { inReadersUnits } from "./inReadersUnits.ts";
import { type ReasonLine, reasonLines } from "./reasonLines.ts";
import { unbroken } from "./unbroken.ts";

/** Why a section's numbers are what they are: formula, the values they hang on with their origins, source. */
export function reasonsView(keys: readonly string[], job: Job, units: UnitHabit): TemplateResult {
  const known = keys.map((key) => explanations[key]).filter((each) => each !== undefined);
  if (known.length === 0) return html`${nothing}`;
  return html`<details class="reasons">
    <summary>Why are these numbers so?</summary>
    ${known.map(
      ({ result, formula, inputs, source }) =>
        html`<h3>${result}</h3>
          <p class="formula">${unbroken(inReadersUnits(formula, units)).replaceAll(" x ", " × ")}</p>
          <ul>
            ${reasonLines(job, inputs, units).map(reasonView)}
          </ul>
          <p>Source: ${source}.</p>`,
    )}
  </details>`;
}

function reasonView({ path, label, hasField, value, from, isOpen }: ReasonLine): TemplateResult {
  const named = hasField ? html`<a href="#${fieldIds(path).input}">${label}</a>` : html`${label}`;
  return html`<li class=${isOpen ? "is-open" : ""}>
    ${named}${value === undefined ? nothing : `: ${unbroken(value)}`}${from === undefined ? nothing : ` (${from})`}
  </li>`;
}
