import { html, nothing, type TemplateResult } from "lit-html";
import type { AnySection } from "../sections/parts/section.ts";
import type { Standing } from "./standing.ts";

/**
 * The contents: every section, which one is being read, and in words which ones need somebody. A section with nothing to say of
 * says nothing: what is told stands out, by ear too, and the head of the list says how many there are.
 */
export function contentsView(
  sections: readonly AnySection[],
  standings: readonly Standing[],
  reading: string,
  isWide: boolean,
): TemplateResult {
  const toDo = standings.filter(({ needsAttention }) => needsAttention).length;
  const items = sections.map(({ name, title }, i) => {
    const { words, needsAttention } = standings[i];
    return html`<li class=${needsAttention ? "needs-attention" : ""}>
      <a href="#${name}" aria-current=${name === reading ? "true" : "false"}>
        <span>${title}</span> ${words === "" ? nothing : html`<span class="standing">${words}</span>`}
      </a>
    </li>`;
  });
  const summary =
    toDo === 0 ? "nothing needs a look" : `${toDo} of ${sections.length} ${toDo === 1 ? "needs" : "need"} a look`;
  const here = sections.find(({ name }) => name === reading)?.title ?? "";
  const leave = (event: Event) => {
    // On a narrow page the list lies over the text: it goes once a place is chosen.
    const isLink = event.target instanceof Element && event.target.closest("a") !== null;
    if (isLink && !isWide) (event.currentTarget as HTMLElement).closest("details")?.removeAttribute("open");
  };
  return html`<details class="contents-fold" ?open=${isWide}>
    <summary>
      <span>Contents<span class="here">: ${here}</span></span> <span class="standing">${summary}</span>
    </summary>
    <ol @click=${leave}>${items}</ol>
  </details>`;
}
