import { html, type TemplateResult } from "lit-html";
import type { OpenWorkings } from "./openWorkings.ts";

/** The head above the workings, with the one button that opens or closes them all. */
export function workingsHead(workings: OpenWorkings): TemplateResult {
  const areAllOpen = workings.areAllOpen.value;
  return html`<div class="workings-head">
    <h2>The workings</h2>
    <p class="aside">For the workshop. Each line says its result; open it for what was given, what was worked, and the finding.</p>
    <p class="workings-tools">
      <button type="button" class="is-link" @click=${() => (areAllOpen ? workings.closeAll() : workings.openAll())}>
        ${areAllOpen ? "Close all" : "Open all"}
      </button>
    </p>
  </div>`;
}
