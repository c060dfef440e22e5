import { html, type TemplateResult } from "lit-html";

/** What could not be fetched or worked, and the way on: everything typed is stored, so the page may be loaded anew. */
export function reloadView(sentence: string): TemplateResult {
  return html`<p>${sentence}</p>
    <p class="buttons"><button type="button" @click=${() => location.reload()}>Reload the page</button></p>`;
}
