import { html, nothing, type TemplateResult } from "lit-html";
import type { EarlierLook } from "./earlierLook.ts";
import { clock, day } from "./moments.ts";

/** The band over the page while an earlier version is looked at: which one it is, and the two ways on. */
export function earlierView(
  look: EarlierLook,
  goBack: () => void,
  takeUp: () => void,
): TemplateResult | typeof nothing {
  const looked = look.looked.value;
  if (!looked) return nothing;
  const { endedAt_ms, reason } = looked.version;
  return html`<div class="looking-body" tabindex="-1">
    <p>
      <strong>An earlier version of this job, of ${day.format(endedAt_ms)}, ${clock(endedAt_ms)}: ${reason}.</strong>
      Every figure and answer on this page is of that state. It is only looked at: nothing can be changed in it.
      ${looked.isPassed ? "Meanwhile another tab changed the job; you see that when you go back." : nothing}
    </p>
    <p class="buttons">
      <button type="button" @click=${goBack}>Back to the job as it is now</button>
      <button type="button" @click=${takeUp}>Make this the job</button>
    </p>
  </div>`;
}
