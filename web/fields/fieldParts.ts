import { html, nothing, type TemplateResult } from "lit-html";

export interface FieldIds {
  readonly input: string;
  readonly says: string;
  readonly hint: string;
}

/** Ids of a field's parts, from its path. */
export function fieldIds(path: string, prefix = ""): FieldIds {
  const input = `${prefix}field-${path.replaceAll(".", "-")}`;
  return { input, says: `${input}-says`, hint: `${input}-hint` };
}

/**
 * The sentence below a field: what is wrong with it and what is used in its place (nothing, where it is empty), or how it
 * was understood. Always there, so that it is announced.
 */
export function says(
  ids: FieldIds,
  problem: string | undefined,
  understood: readonly string[],
  untilThen?: string,
  isEmpty = false,
): TemplateResult {
  return html`<p class="says" id=${ids.says} aria-live="polite">
    ${
      problem === undefined
        ? understood.join("; ")
        : html`<strong>${isEmpty ? "Empty" : "Wrong"}:</strong> ${problem}.${untilThen === undefined || isEmpty ? nothing : ` Using ${untilThen}.`}`
    }
  </p>`;
}
