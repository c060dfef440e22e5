import { html, type TemplateResult } from "lit-html";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import { newName } from "../../editing/newName.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";

const MOST_PACKS = 12;

/** The candidate packs: a row each, and below it what only some need. */
export function packsForm(form: Form): TemplateResult {
  const { packs } = form.job;
  return listTable(form, {
    path: "packs",
    caption: "Packs to compare.",
    entry: "pack",
    rowName: (i) => packs[i].name,
    columns: [
      { key: "name", head: "Name" },
      { key: "seriesModules", head: "In series" },
      { key: "parallelModules", head: "In parallel" },
      { key: "ceiling_frac", head: "Charge to" },
      { key: "floor_frac", head: "Discharge to" },
      { key: "boxes_frac", head: "Boxes, of modules" },
      { key: "leads_mohm", head: "Cables" },
    ],
    most: MOST_PACKS,
    least: 1,
    add: (state) => withCopy(state, state.job.packs.length - 1),
    copy: withCopy,
    remove: (state, index) => {
      form.view.packIndex.value = undefined;
      return withoutEntry(state, "packs", index);
    },
    below: (i) => html`${form.field(`packs.${i}.isAskedFor`)}${wholePack(form, i)}`,
  });
}

/** A pack known by its energy, voltage and mass alone, in place of modules. */
function wholePack(form: Form, index: number): TemplateResult {
  const path = `packs.${index}.whole`;
  const paths = ["energy_kWh", "nominal_V", "mass_kgpkWh"].map((key) => `${path}.${key}`);
  return form.fold(
    "Energy, voltage and mass instead of modules",
    optionalGroup(
      form,
      {
        path,
        name: `whole pack ${index + 1}`,
        without: "Worked out from its modules.",
        start: ({ controller }) => ({
          energy_kWh: 10,
          nominal_V: Math.round((controller.min_V + controller.max_V) / 2),
          mass_kgpkWh: usualOf("packs.0.whole.mass_kgpkWh"),
        }),
      },
      () => form.fields(...paths),
    ),
    path,
  );
}

function withCopy(state: EditorState, index: number): EditorState {
  const { packs } = state.job;
  const { isAskedFor: _asked, ...like } = packs[index];
  const taken = packs.map(({ name }) => name);
  return withEntry(state, "packs", index + 1, { ...like, name: newName(`${like.name}, copy`, taken) }, index);
}
