import type { TemplateResult } from "lit-html";
import type { Form } from "../../fields/fieldContext.ts";
import { viewChoice } from "../../fields/viewChoice.ts";

/** Which pack the figures of a single pack show; asked in every section that has one, and the same in all of them. */
export function packChoice(form: Form, id: string): TemplateResult {
  return viewChoice(
    id,
    "Show pack",
    [{ key: "", words: "recommended" }, ...form.job.packs.map(({ name }, i) => ({ key: String(i), words: name }))],
    String(form.view.packIndex.value ?? ""),
    (key) => {
      form.view.packIndex.value = key === "" ? undefined : Number(key);
    },
  );
}
