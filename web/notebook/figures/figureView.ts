import { html, type TemplateResult } from "lit-html";
import type { FileKind } from "../../charts/parts/reading/save.ts";
import { handbookFace } from "../../look/handbookFace.ts";
import { unbroken } from "../../look/unbroken.ts";
import type { Figure } from "../../sections/parts/section.ts";
import { fetchPart } from "../../worker/fetchPart.ts";

const kinds: Readonly<Record<FileKind, string>> = { svg: "drawing (SVG)", png: "picture (PNG)", csv: "numbers (CSV)" };

/**
 * A figure with its number, its caption, what it shows in words for those who cannot see it well, and ways to save it.
 * `readable` is the drawing with its reading line.
 */
export function figureView(
  figure: Figure,
  readable: HTMLElement,
  number: number,
  attempt: (work: () => Promise<unknown>) => void,
): TemplateResult {
  return html`<figure id="figure-${number}">
    ${readable}
    <figcaption><span class="number">Figure ${number}.</span> ${unbroken(figure.caption)}</figcaption>
    ${figureTools(figure, `Figure ${number}`, attempt)}
  </figure>`;
}

/** What a figure shows in words, and the ways to save it; `name` tells its buttons from those of others. */
export function figureTools(
  figure: Figure,
  name: string,
  attempt: (work: () => Promise<unknown>) => void,
): TemplateResult {
  const save = (kind: FileKind) =>
    attempt(async () => {
      const { saveFigure } = await fetchPart(() => import("../../charts/parts/reading/save.ts")); // seldom asked for, so not among what every visit loads
      const title = name === figure.caption ? name : `${name} ${figure.caption}`;
      return saveFigure(figure.chart, kind, title, await fetchPart(handbookFace));
    });
  return html`<details class="in-words">
    <summary>Data and download<span class="unseen"> of ${name}</span></summary>
    <p>${unbroken(figure.chart.alt)}</p>
    <p class="buttons figure-tools">
      ${Object.entries(kinds).map(
        ([kind, words]) =>
          html`<button type="button" @click=${() => save(kind as FileKind)}>
            Save as ${words}<span class="unseen"> of ${name}</span>
          </button>`,
      )}
    </p>
  </details>`;
}
