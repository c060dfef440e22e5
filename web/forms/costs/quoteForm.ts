import { html, nothing, type TemplateResult } from "lit-html";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";

const PATH = "costs.work";
const MOST = 60;

/** The quote: a row for each line of work, the price of the cells, and what is added to all. */
export function quoteForm(form: Form): TemplateResult {
  const { costs, packs } = form.job;
  if (!costs) return html`${nothing}`;
  const lineOf = (state: EditorState, index?: number) =>
    index === undefined ? { name: "Work", parts: { low: 0 }, hours: { low_h: 0 } } : state.job.costs?.work[index];
  return html`${listTable(form, {
    path: PATH,
    caption: "The quote, without cells.",
    entry: "line",
    rowName: (i) => costs.work[i]?.name ?? "",
    columns: [
      { key: "name", head: "What" },
      { key: "parts.low", head: "Parts" },
      { key: "parts.high", head: "Parts up to" },
      { key: "hours.low_h", head: "Hours" },
      { key: "hours.high_h", head: "Hours up to" },
    ],
    most: MOST,
    add: (state) => withEntry(state, PATH, state.job.costs?.work.length ?? 0, lineOf(state)),
    copy: (state, i) => withEntry(state, PATH, i + 1, lineOf(state, i), i),
    remove: (state, i) => withoutEntry(state, PATH, i),
  })}
  ${form.fields("costs.work_perh", "costs.contingency_frac", "costs.vat_frac")}
  ${optionalGroup(
    form,
    {
      path: "costs.cells",
      name: "price of cells",
      without: "No price that holds for every pack.",
      start: () => ({ per: "module", price: { low: 0 } }),
    },
    () => form.fields("costs.cells.per", "costs.cells.price.low", "costs.cells.price.high"),
  )}
  ${form.fold(
    "Packs with a price of their own",
    html`${packs.map((pack, i) => ownPrice(form, `packs.${i}.cellPrice`, pack.name))}`,
    ...packs.map((_, i) => `packs.${i}.cellPrice`),
  )}`;
}

function ownPrice(form: Form, path: string, pack: string): TemplateResult {
  return optionalGroup(
    form,
    {
      path,
      name: `price of the cells of ${pack}`,
      without: "As every pack.",
      start: () => ({ per: "pack", price: { low: 0 } }),
    },
    () => form.fields(`${path}.per`, `${path}.price.low`, `${path}.price.high`),
  );
}
