import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { fieldAt } from "../../editing/fieldTable/fieldAt.ts";
import type { Editing } from "../../fields/fieldContext.ts";
import { fieldIds, says } from "../../fields/fieldParts.ts";
import { type NumberedFigure, withNames, withNumbers } from "./figureNames.ts";

/**
 * The field of a note. Its writer sees and types "Figure 5"; the job keeps the figure's name, so that the note goes on naming the
 * same figure when others come or go above it.
 */
export function noteEditor(
  context: Editing,
  index: number,
  label: string,
  figures: readonly NumberedFigure[],
): TemplateResult {
  const { jobEditor, typing } = context;
  const path = `notes.${index}.text`;
  const ids = fieldIds(path, context.idPrefix);
  const draft = jobEditor.drafts.value[path];
  const isTyping = typing.value?.path === path;
  const kept = draft?.typed ?? jobEditor.job.value.notes[index]?.text ?? "";
  const text = isTyping ? (typing.value?.text ?? "") : withNumbers(kept, figures);
  const problem = isTyping ? undefined : draft?.problem;
  const enter = (event: Event) => {
    const typed = (event.target as HTMLTextAreaElement).value;
    typing.value = { path, text: typed };
    jobEditor.editPlain(path, withNames(typed, figures), label);
  };
  const leave = () => {
    typing.value = undefined;
    jobEditor.settle();
  };
  return html`<div class="field is-words is-long ${problem === undefined ? "" : "is-wrong"}">
      <label for=${ids.input}>${label}</label>
      <span class="entry"><textarea id=${ids.input} rows="3" .value=${live(text)} aria-describedby="${ids.says} ${ids.hint}"
        aria-invalid=${problem === undefined ? "false" : "true"}
        @input=${enter} @change=${leave} @blur=${leave}></textarea></span>
      ${says(ids, problem, [])}
      <p class="aside" id=${ids.hint}>${fieldAt(path).help ?? nothing}</p>
    </div>
    ${figures.length === 0 ? nothing : figureList(figures)}`;
}

/** The figures of the page by number and name; a press puts one into the note where its writer was. */
function figureList(figures: readonly NumberedFigure[]): TemplateResult {
  const put = (event: Event, words: string) => {
    const field = (event.currentTarget as Element).closest(".note")?.querySelector("textarea");
    if (!field) return;
    field.setRangeText(words, field.selectionStart, field.selectionEnd, "end");
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.focus();
  };
  return html`<details class="fold figures-to-name">
    <summary>Name a figure in it</summary>
    <ul class="folded">
      ${figures.map(
        ({ number, caption, isHidden }) =>
          html`<li>
            <button type="button" @click=${(event: Event) => put(event, `Figure ${number}`)}>Figure ${number}</button>
            ${caption}${isHidden ? " (hidden from client)" : nothing}
          </li>`,
      )}
    </ul>
  </details>`;
}
