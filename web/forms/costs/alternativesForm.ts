import { html, nothing, type TemplateResult } from "lit-html";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import { newName } from "../../editing/newName.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";
import { FIRST_l100km } from "./runningForm.ts";

const PATH = "costs.alternatives";
const MOST = 6;

/** What the client may do instead: a row each, below it what it would cost to run where that is not as now. */
export function alternativesForm(form: Form): TemplateResult {
  const { costs } = form.job;
  if (!costs) return html`${nothing}`;
  return listTable(form, {
    path: PATH,
    caption: "Instead of the conversion.",
    entry: "alternative",
    rowName: (i) => costs.alternatives[i]?.name ?? "",
    columns: [
      { key: "name", head: "What" },
      { key: "price.low", head: "Price" },
      { key: "price.high", head: "Price up to" },
      { key: "isNeededAnyway", head: "Needed anyway" },
    ],
    most: MOST,
    add: withOneMore,
    remove: (state, i) => withoutEntry(state, PATH, i),
    below: (i) => ownRunning(form, i, costs.alternatives[i]?.name ?? ""),
  });
}

function ownRunning(form: Form, index: number, name: string): TemplateResult {
  const path = `${PATH}.${index}.running`;
  return form.fold(
    "It runs at other costs than the car now",
    optionalGroup(
      form,
      {
        path,
        name: `running costs of ${name}`,
        without: "Fuel, servicing and road charges as now.",
        start: ({ costs }) => ({
          use_l100km: costs?.running?.use_l100km ?? FIRST_l100km,
          servicing: costs?.running?.now.servicing ?? { low: 0 },
          roadCharge_perday: costs?.running?.now.roadCharge_perday ?? 0,
        }),
      },
      () =>
        form.fields(
          `${path}.use_l100km`,
          `${path}.servicing.low`,
          `${path}.servicing.high`,
          `${path}.roadCharge_perday`,
        ),
    ),
    path,
  );
}

function withOneMore(state: EditorState): EditorState {
  const { alternatives = [] } = state.job.costs ?? {};
  const taken = alternatives.map(({ name }) => name);
  const name = newName(taken.length === 0 ? "engine rebuild" : "another car", taken);
  return withEntry(state, PATH, alternatives.length, { name, price: { low: 0 }, isNeededAnyway: false });
}
