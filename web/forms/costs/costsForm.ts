import { html, type TemplateResult } from "lit-html";
import type { Form } from "../../fields/fieldContext.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";
import { alternativesForm } from "./alternativesForm.ts";
import { quoteForm } from "./quoteForm.ts";
import { runningForm } from "./runningForm.ts";

/** What the conversion costs, what the client would pay without it, and what the car costs to run. */
export function costsForm(form: Form): TemplateResult {
  const { currency = "" } = form.job;
  return html`<p class="aside">
    ${currency === "" ? "No currency is named" : html`Amounts are in ${currency}`}; it is set under
    <a href="#charging">Charging</a>, where the price of electricity is too.
  </p>
  ${optionalGroup(
    form,
    {
      path: "costs",
      name: "costs",
      without: "Nothing is priced yet.",
      start: () => ({ work: [], alternatives: [], contingency_frac: usualOf("costs.contingency_frac") }),
    },
    () => html`${quoteForm(form)} ${alternativesForm(form)} ${runningForm(form)}`,
  )}`;
}
