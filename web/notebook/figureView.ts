import { html, type TemplateResult } from "lit-html";
import type { Figure } from "./section.ts";

/** A figure with its number, its caption, and what it shows in words for those who cannot see it well. */
export function figureView(figure: Figure, number: number): TemplateResult {
  return html`<figure>
    ${figure.chart.svg}
    <figcaption><span class="number">Figure ${number}.</span> ${figure.caption}</figcaption>
    <details class="in-words"><summary>Figure ${number} in words</summary><p>${figure.chart.alt}</p></details>
  </figure>`;
}
