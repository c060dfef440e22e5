import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { inReadersUnits } from "../../../shared/quantity/inReadersUnits.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Explanations, ReasonFacts } from "../../../sim/index.ts";
import { fieldIds } from "../../fields/fieldParts.ts";
import { unbroken } from "../../look/unbroken.ts";
import { type ReasonLine, reasonLines } from "./reasonLines.ts";

/** What reasons are given of: the job, and once it is worked out, the pack in view with its numbers. */
export interface ReasonsOf {
  readonly job: Job;
  readonly units: UnitHabit;
  readonly facts?: ReasonFacts | undefined;
  /** How the pack is called that the numbers are of: the one in view, or that of the answer. */
  readonly whose: string;
}

const MOST_OPEN = 12;

/**
 * How a section's numbers were calculated, the shortest way first: each result as the sum with its numbers; what in them was not
 * measured; and on demand the formulas, every value with its origin, and the sources.
 */
export function reasonsView(keys: readonly string[], of: ReasonsOf, known: Explanations): TemplateResult {
  const explained = keys.flatMap((key) => {
    const explanation = known.explanations[key];
    if (explanation === undefined) return [];
    const lines = reasonLines(of.job, explanation.inputs, of.units, of.facts?.packIndex);
    return [{ ...explanation, lines, worked: of.facts && known.workedReason(key, of.facts, of.units) }];
  });
  const open = explained.flatMap(({ lines }) => lines.filter(({ isOpen }) => isOpen));
  const once = open.filter(({ path }, i) => open.findIndex((other) => other.path === path) === i);
  return html`${explained.map(
    ({ result, worked }) => html`<p class="sum">
      ${result}: ${worked ? html`<strong>${unbroken(worked.value)}</strong>, ${unbroken(worked.isOfEveryPack ? "for every pack" : of.whose)}` : "not worked out yet"}
      ${worked?.lines.map((line) => html`<br />${inSigns(line)}`)}
    </p>`,
  )}
  ${
    once.length === 0
      ? html`<p>Everything in these numbers was measured, chosen, or is from a handbook.</p>`
      : html`<h3>Not measured</h3>
        <ul>
          ${once.slice(0, MOST_OPEN).map(reasonView)}
        </ul>
        ${once.length > MOST_OPEN ? html`<p>And ${once.length - MOST_OPEN} more, below.</p>` : nothing}`
  }
  <details>
    <summary>Formulas, all values, sources</summary>
    ${explained.map(
      ({ result, formula, lines, source }) => html`<h3>${result}</h3>
        <p class="formula">${inSigns(inReadersUnits(formula, of.units))}</p>
        <ul>
          ${lines.map(reasonView)}
        </ul>
        <p>Source: ${source}.</p>`,
    )}
  </details>`;
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
