import type { TemplateResult } from "lit-html";
import { withGroup, withoutGroup } from "../../editing/groupEdits.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";

const PATH = "module.tested";
const MOST = 400;

/** Reclaimed modules, each with its capacity as tested: a pack holds what the weakest of the best of them gives. */
export function testedForm(form: Form): TemplateResult {
  const entry = ({ capacity_Ah }: { readonly capacity_Ah: number }) => ({ capacity_Ah });
  return listTable(form, {
    path: PATH,
    caption:
      "Modules tested one by one. The best are used, and the weakest of them decides; none: all are as entered above.",
    entry: "tested module",
    rowName: (i) => `module ${i + 1}`,
    columns: [{ key: "capacity_Ah", head: "Capacity as tested" }],
    most: MOST,
    add: (state) => {
      const { tested, capacity_Ah } = state.job.module;
      return tested === undefined
        ? withGroup(state, PATH, [entry({ capacity_Ah })], {})
        : withEntry(state, PATH, tested.length, entry(tested[tested.length - 1] ?? { capacity_Ah }));
    },
    remove: (state, i) =>
      state.job.module.tested?.length === 1 ? withoutGroup(state, PATH) : withoutEntry(state, PATH, i),
  });
}
