import { html, nothing, type TemplateResult } from "lit-html";
import { unbroken } from "../../look/unbroken.ts";
import type { AnySection } from "../../sections/parts/section.ts";
import type { Reading } from "../graph/graph.ts";
import type { Standing } from "./standing.ts";

/** The line beside a working's title: its result, and in bold what is wrong with its fields or has to be checked. */
export function summaryView(section: AnySection, reading: Reading<unknown>, standing: Standing): TemplateResult {
  const { words, needsAttention } = standing;
  const note = words === "" ? nothing : needsAttention ? html` <strong>${words}</strong>` : html` <em>${words}</em>`;
  if (reading.state !== "ready") return html`${note}`;
  const result = reading.value as never;
  const line = section.summary?.(result) ?? section.inShort?.(result) ?? section.sentence(result);
  return html`<span class="result">${unbroken(line)}</span>${note}`;
}
