import { html, nothing, type TemplateResult } from "lit-html";
import { accessories } from "../../../shared/parts/accessories.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { partPicker } from "../parts/partPicker.ts";

const MOST_ITEMS = 30;
const PATH = "accessories.items";

/** What draws on the pack beside the drive: the standing draw, and things that are on for a share of the drive. */
export function accessoriesForm(form: Form): TemplateResult {
  const { items } = form.job.accessories;
  const ours = { name: "something of our own", power_W: 50, duty_frac: 1, supply: "12V" as const };
  const add = () => attempt(form, PATH, "An accessory more", (state) => withEntry(state, PATH, items.length, ours));
  const remove = (i: number) =>
    attempt(form, PATH, `${items[i].name} taken out`, (state) => withoutEntry(state, PATH, i));
  return html`${form.fields("accessories.standing_W", "accessories.dcdcEfficiency_frac")}
  ${items.map(
    ({ name }, i) => html`<fieldset class="accessory">
      <legend class="unseen">${name}</legend>
      ${form.fields(
        `${PATH}.${i}.name`,
        `${PATH}.${i}.power_W`,
        `${PATH}.${i}.duty_frac`,
        `${PATH}.${i}.supply`,
        html`<p class="buttons">
          <button type="button" @click=${() => remove(i)}>Take out<span class="unseen"> ${name}</span></button>
        </p>`,
      )}
    </fieldset>`,
  )}
  ${
    items.length < MOST_ITEMS
      ? html`${partPicker(form, { id: "accessory", label: "A usual accessory to add", parts: accessories, path: PATH, into: "list" })}
        <p class="buttons"><button type="button" @click=${add}>Add one of our own</button></p>`
      : nothing
  }
  ${refusal(form, PATH)}`;
}
