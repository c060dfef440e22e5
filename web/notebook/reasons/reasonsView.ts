import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { inReadersUnits } from "../../../shared/quantity/inReadersUnits.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Explanations, ReasonFacts } from "../../../sim/index.ts";
import { fieldIds } from "../../fields/fieldParts.ts";
import { unbroken } from "../../look/unbroken.ts";
import { type ReasonLine, reasonLines } from "./reasonLines.ts";

/** What reasons are told of: the job, and once it is worked out, the pack in view with its numbers. */
export interface ReasonsOf {
  readonly job: Job;
  readonly units: UnitHabit;
  readonly facts?: ReasonFacts | undefined;
  /** How the pack is called that the numbers are of: the one in view, or that of the answer. */
  readonly whose: string;
}

/**
 * Why a section's numbers are what they are: the result, its formula, the formula with the numbers put in, the values it hangs on
 * with their origins, the source.
 */
export function reasonsView(keys: readonly string[], of: ReasonsOf, known: Explanations): TemplateResult {
  return html`${keys.map((key) => {
    const explanation = known.explanations[key];
    if (explanation === undefined) return nothing;
    const { result, formula, inputs, source } = explanation;
    const worked = of.facts && known.workedReason(key, of.facts, of.units);
    const whose = worked?.isOfEveryPack ? "for every pack" : of.whose;
    return html`<h3>${result}</h3>
      <p>${worked ? html`<strong>${unbroken(worked.value)}</strong>, ${unbroken(whose)}` : "Not worked out yet."}</p>
      <p class="formula">
        ${inSigns(inReadersUnits(formula, of.units))}
        ${worked?.lines.map((line) => html`<br />${inSigns(line)}`)}
      </p>
      <ul>
        ${reasonLines(of.job, inputs, of.units, of.facts?.packIndex).map(reasonView)}
      </ul>
      <p>Source: ${source}.</p>`;
  })}`;
}

function inSigns(text: string): string {
  return unbroken(text).replaceAll(" x ", " × ").replaceAll(" - ", " − ").replaceAll("^2", "²").replaceAll("^3", "³");
}

function reasonView({ path, label, hasField, value, from, isOpen }: ReasonLine): TemplateResult {
  const named = hasField ? html`<a href="#${fieldIds(path).input}">${label}</a>` : html`${label}`;
  return html`<li class=${isOpen ? "is-open" : ""}>
    ${named}${value === undefined ? nothing : `: ${unbroken(value)}`} (${from})
  </li>`;
}
