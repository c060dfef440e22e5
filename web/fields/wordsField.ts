import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { says } from "./fieldParts.ts";

/** A field for words that are no part of the job, or not by a path of their own. */
export interface WordsFieldSpec {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  /** Why what stands there will not do, without a full stop. */
  readonly problem?: string | undefined;
  /** How it was understood. */
  readonly understood?: string | undefined;
  /** Lines it has room for; one line where absent. */
  readonly rows?: number;
  /** Words that are only words: a name, a caption. Otherwise they are read, and `problem` or `understood` says how. */
  readonly isPlain?: boolean;
  /** Takes the text at every key, so that nothing typed is lost. */
  readonly write: (text: string) => void;
  /** Hears when the field is left. */
  readonly leave?: (text: string) => void;
}

/** The field, with what is wrong or how it was understood below it. Nothing pasted is cut off in silence. */
export function wordsField({
  id,
  label,
  text,
  problem,
  understood,
  rows,
  isPlain,
  write,
  leave,
}: WordsFieldSpec): TemplateResult {
  const invalid = problem === undefined ? "false" : "true";
  const textOf = (event: Event) => (event.target as HTMLInputElement | HTMLTextAreaElement).value;
  const put = (event: Event) => write(textOf(event));
  const change = (event: Event) => leave?.(textOf(event));
  const entry =
    rows === undefined
      ? html`<input id=${id} type="text" autocomplete="off" .value=${live(text)} aria-describedby="${id}-says"
          aria-invalid=${invalid} @input=${put} @change=${change} />`
      : html`<textarea id=${id} rows=${rows} .value=${live(text)} aria-describedby="${id}-says"
          aria-invalid=${invalid} @input=${put} @change=${change}></textarea>`;
  const shape = `${isPlain ? "is-words" : ""} ${rows === undefined ? "" : "is-long"}`;
  return html`<div class="field ${shape} ${problem === undefined ? "" : "is-wrong"}">
    <label for=${id}>${label}</label>
    <span class="entry">${entry}</span>
    ${says({ input: id, says: `${id}-says`, hint: "" }, problem, understood === undefined ? [] : [understood])}
    <span class="as-printed">${problem === undefined ? text : nothing}</span>
  </div>`;
}

/** Why a text has too many letters for what it is put into, or nothing. */
export function tooLong(text: string, most: number): string | undefined {
  return text.length > most ? `found ${text.length} letters, at most ${most} can be kept` : undefined;
}

/** The first of several faults, and how many more there are: forty sentences below a field are read by nobody. */
export function firstOf(faults: readonly string[], most = 2): string {
  const more = faults.length - most;
  return `${faults.slice(0, most).join("; ")}${more > 0 ? `; and ${more} more like it` : ""}`;
}
