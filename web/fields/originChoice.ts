import { html, nothing, type TemplateResult } from "lit-html";
import type { Origin } from "../../shared/job/job.ts";
import { atPath } from "../../shared/job/path.ts";
import { labelOf } from "../editing/fieldTable/fieldAt.ts";
import type { FieldContext } from "./fieldContext.ts";
import { fieldIds } from "./fieldParts.ts";
import type { QuantityFieldSpec } from "./quantityField.ts";

export const originWords: Readonly<Record<Origin["from"], string>> = {
  typed: "typed",
  measured: "measured",
  handbook: "handbook",
  usual: "usual value",
  guessed: "guessed",
};

/** Where the value of a field comes from, as a choice; nothing is said of values that the job says nothing of. */
export function originChoice(context: FieldContext, path: string, field: QuantityFieldSpec): TemplateResult {
  const { jobEditor } = context;
  const origin = jobEditor.job.value.origins[path];
  const id = `${fieldIds(path, context.idPrefix).input}-from`;
  const choose = (event: Event) => {
    const from = (event.target as HTMLSelectElement).value as Origin["from"] | "";
    if (from === "") return;
    const what = `${field.label}: where from`;
    if (from === "usual" && field.usual) jobEditor.edit(path, "", field.usual.value, { what, from });
    else jobEditor.edit(path, origin?.typed ?? "", atPath(jobEditor.job.value, path), { what, from });
    jobEditor.settle();
  };
  // A question is no name: “Where How far on an ordinary day? comes from”.
  const called = field.label.endsWith("?") ? labelOf(path) : field.label;
  const options = Object.entries(originWords).filter(
    // “Typed” says that nobody has said yet, so it is no answer to choose.
    ([from]) => from === origin?.from || (from === "usual" ? field.usual !== undefined : from !== "typed"),
  );
  return html`<span class="origin">
    <label class="unseen" for=${id}>Where ${called} comes from</label>
    <select id=${id} @change=${choose}>
      ${origin ? nothing : html`<option value="" selected>from where?</option>`}
      ${options.map(([from, words]) => html`<option value=${from} .selected=${origin?.from === from}>${words}</option>`)}
    </select>
  </span>`;
}
