import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { atPath } from "../../shared/job/path.ts";
import type { Field } from "../editing/fieldTable/fieldList.ts";
import type { Editing } from "./fieldContext.ts";
import { fieldIds, says } from "./fieldParts.ts";

/** A field for words: one line, or as many as it takes. */
export function textField(
  context: Editing,
  path: string,
  field: Extract<Field, { type: "line" | "text" }>,
): TemplateResult {
  const { jobEditor, typing } = context;
  const ids = fieldIds(path, context.idPrefix);
  const draft = jobEditor.drafts.value[path];
  const isTyping = typing.value?.path === path;
  const text = isTyping
    ? (typing.value?.text ?? "")
    : (draft?.typed ?? String(atPath(jobEditor.job.value, path) ?? ""));
  const problem = isTyping ? undefined : draft?.problem;
  const enter = (event: Event) => {
    const typed = (event.target as HTMLInputElement | HTMLTextAreaElement).value;
    typing.value = { path, text: typed };
    jobEditor.editPlain(path, typed, field.label);
  };
  const leave = () => {
    typing.value = undefined;
    jobEditor.settle();
  };
  const held = String(atPath(jobEditor.job.value, path) ?? "");
  const stands = held === "" ? undefined : `“${held.length > 40 ? `${held.slice(0, 40)} …` : held}”`;
  const described = `${ids.says} ${ids.hint}`;
  const invalid = problem === undefined ? "false" : "true";
  const input =
    field.type === "line"
      ? html`<input id=${ids.input} type="text" .value=${live(text)} aria-describedby=${described}
          aria-invalid=${invalid} @input=${enter} @change=${leave} @blur=${leave} />`
      : html`<textarea id=${ids.input} rows="3" .value=${live(text)} aria-describedby=${described}
          aria-invalid=${invalid} @input=${enter} @change=${leave} @blur=${leave}></textarea>`;
  return html`<div class="field is-words ${field.type === "text" ? "is-long" : ""} ${problem === undefined ? "" : "is-wrong"}">
    <label for=${ids.input}>${field.label}</label>
    <span class="entry">${input}</span>
    ${says(ids, problem, [], stands)}
    <p class="hint" id=${ids.hint}>${field.help ?? nothing}</p>
    <span class="as-printed">${text}</span>
  </div>`;
}
