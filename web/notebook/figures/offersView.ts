import { html, nothing, type TemplateResult } from "lit-html";
import { attempt, refusal } from "../../fields/attempt.ts";
import { createForm, type FieldContext } from "../../fields/fieldContext.ts";
import type { Offer } from "../../sections/parts/section.ts";

/** What can be done with a result, a button each; why the last one was refused below them. */
export function offersView(
  name: string,
  offers: readonly Offer[],
  context: FieldContext,
): TemplateResult | typeof nothing {
  if (offers.length === 0) return nothing;
  const form = createForm(context);
  const place = `offers of ${name}`;
  return html`<p class="buttons">
      ${offers.map(
        ({ words, done, change }) =>
          html`<button type="button" @click=${() => attempt(form, place, done, change)}>${words}</button>`,
      )}
    </p>
    ${refusal(form, place)}`;
}
