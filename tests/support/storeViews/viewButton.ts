import { html, type TemplateResult } from "lit-html";

/** A button; `about` is what it acts on, for who hears the page instead of seeing it ("Duplicate" … "Saloon 1960"). */
export function viewButton(words: string, onClick: (event: Event) => void, about?: string): TemplateResult {
  return about === undefined
    ? html`<button type="button" @click=${onClick}>${words}</button>`
    : html`<button type="button" @click=${onClick}>${words}<span class="unseen"> ${about}</span></button>`;
}
