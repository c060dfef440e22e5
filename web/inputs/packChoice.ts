import type { TemplateResult } from "lit-html";
import type { Form } from "./form.ts";
import { viewChoice } from "./viewChoice.ts";

/** Which pack the figures of a single pack show. */
export function packChoice(form: Form, id: string): TemplateResult {
  return viewChoice(
    id,
    "The pack to look at",
    [
      { key: "", words: "the one that is enough" },
      ...form.job.packs.map(({ name }, i) => ({ key: String(i), words: name })),
    ],
    String(form.view.packIndex.value ?? ""),
    (key) => {
      form.view.packIndex.value = key === "" ? undefined : Number(key);
    },
  );
}
