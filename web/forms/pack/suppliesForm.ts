import { html, nothing, type TemplateResult } from "lit-html";
import { supplies as generic } from "../../../shared/parts/supplies.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import { newName } from "../../editing/newName.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";
import { partPicker } from "../parts/partPicker.ts";

const MOST = 8;
const PATH = "supplies";

/** Where the car is charged: a row a place, below it its hours and prices. */
export function suppliesForm(form: Form): TemplateResult {
  const { supplies } = form.job;
  return html`${listTable(form, {
    path: PATH,
    caption: "Places to charge, the usual one first.",
    entry: "place",
    rowName: (i) => supplies[i].name,
    columns: [
      { key: "name", head: "Place" },
      { key: "kind", head: "Supply" },
      { key: "mode", head: "Mode" },
      { key: "voltage_V", head: "Voltage" },
      { key: "current_A", head: "Current" },
    ],
    most: MOST,
    add: (state) => withOneMore(state, state.job.supplies.length),
    copy: (state, i) => withOneMore(state, i + 1, i),
    remove: (state, i) => withoutEntry(state, PATH, i),
    below: (i) => hoursAndPrices(form, i),
  })}
  ${
    supplies.length < MOST
      ? partPicker(form, { id: "supply", label: "A usual supply to add", parts: generic, path: PATH, into: "list" })
      : nothing
  }
  ${form.fields("currency")}`;
}

function hoursAndPrices(form: Form, index: number): TemplateResult {
  const path = `${PATH}.${index}`;
  const name = form.job.supplies[index].name;
  return form.fold(
    "Hours and prices",
    html`${form.fields(`${path}.price_perkWh`)}
    ${optionalGroup(
      form,
      {
        path: `${path}.hours`,
        name: `hours at ${name}`,
        without: "The car may charge there all day.",
        start: () => ({ from: "18:00", to: "8:00" }),
      },
      () => form.fields(`${path}.hours.from`, `${path}.hours.to`),
    )}
    ${optionalGroup(
      form,
      {
        path: `${path}.cheap`,
        name: `cheap hours at ${name}`,
        without: "Every hour costs the same.",
        start: () => ({ from: "23:30", to: "7:30" }),
      },
      () => form.fields(`${path}.cheap.from`, `${path}.cheap.to`, `${path}.cheap.price_perkWh`),
    )}`,
    path,
  );
}

function withOneMore(state: EditorState, index: number, like?: number): EditorState {
  const { supplies } = state.job;
  const taken = supplies.map(({ name }) => name);
  const entry = like === undefined ? generic[1].data : supplies[like];
  return withEntry(state, PATH, index, { ...entry, name: newName(entry.name, taken, ", ") }, like);
}
