import { html, nothing, type TemplateResult } from "lit-html";
import { viewButton } from "./viewButton.ts";

/** One sentence about something that happened without the person asking. */
export function viewNews(news: string | undefined, onDismiss: () => void): TemplateResult {
  return html`<div class="news" role="status">
    ${
      news === undefined
        ? nothing
        : html`<p>${news}</p>
          ${viewButton("Close", onDismiss, "this message")}`
    }
  </div>`;
}
