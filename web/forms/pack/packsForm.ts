import { html, nothing, type TemplateResult } from "lit-html";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";

const MOST_PACKS = 12;

/** The candidate packs: every one with its fields, and buttons to add, copy and take out. */
export function packsForm(form: Form): TemplateResult {
  const { packs } = form.job;
  const { jobEditor, view } = form;
  const copy = (index: number) => {
    const like = packs[index];
    const pack = {
      ...like,
      name: newName(
        `${like.name}, copy`,
        packs.map(({ name }) => name),
      ),
    };
    jobEditor.change("A pack more", (state) => withEntry(state, "packs", index + 1, pack, index));
  };
  const remove = (index: number) => {
    view.packIndex.value = undefined;
    jobEditor.change(`${packs[index].name} taken out`, (state) => withoutEntry(state, "packs", index));
  };
  return html`${packs.map(
    (pack, i) => html`<fieldset class="pack">
        <legend class="unseen">${pack.name}</legend>
        ${form.fields(
          `packs.${i}.name`,
          `packs.${i}.seriesModules`,
          `packs.${i}.parallelModules`,
          html`<p class="buttons">
          ${
            packs.length < MOST_PACKS
              ? html`<button type="button" @click=${() => copy(i)}>Copy<span class="unseen"> ${pack.name}</span></button>`
              : nothing
          }
          ${
            packs.length > 1
              ? html`<button type="button" @click=${() => remove(i)}>Take out<span class="unseen"> ${pack.name}</span></button>`
              : nothing
          }
        </p>`,
        )}
        ${form.fold(
          "Window, boxes, leads",
          form.fields(
            `packs.${i}.ceiling_frac`,
            `packs.${i}.floor_frac`,
            `packs.${i}.regenTo_frac`,
            `packs.${i}.boxes_frac`,
            `packs.${i}.leads_mohm`,
          ),
          `packs.${i}.ceiling_frac`,
          `packs.${i}.floor_frac`,
          `packs.${i}.regenTo_frac`,
          `packs.${i}.boxes_frac`,
          `packs.${i}.leads_mohm`,
        )}
      </fieldset>`,
  )}
    <p class="aside">${packs.length} of at most ${MOST_PACKS} packs. Copy one and change it to add another.</p>`;
}

function newName(wanted: string, taken: readonly string[]): string {
  if (!taken.includes(wanted)) return wanted;
  let number = 2;
  while (taken.includes(`${wanted} ${number}`)) number += 1;
  return `${wanted} ${number}`;
}
