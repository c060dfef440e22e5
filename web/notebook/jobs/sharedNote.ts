import { html, type TemplateResult } from "lit-html";

/** What a page that was sent says of itself. */
export function sharedNote(): TemplateResult {
  return html`<p class="aside">
    This page was sent with its job inside and works without a network. What stands beside the answer can be tried out; nothing is
    kept or sent.
  </p>`;
}
