import { html, type TemplateResult } from "lit-html";
import type { Answer } from "../../sim/index.ts";
import type { Form } from "../fields/fieldContext.ts";
import { backToPinned, pinnedWords, unpinned, withPin } from "./pin.ts";

/** What is pinned, and the presses that pin, go back and unpin. `answer` is absent while it is not settled: nothing is pinned then. */
export function pinView(
  form: Form,
  answer: Answer | undefined,
  chosen: number | undefined,
  now: () => Date,
): TemplateResult {
  const { job, jobEditor } = form;
  const { pinned } = job;
  if (!pinned) {
    const pin = () => {
      if (answer) jobEditor.change("Pin this", (state) => withPin(state, answer, now().toISOString()));
    };
    return html`<p class="pin">
      <button type="button" class="as-link" ?disabled=${!answer} @click=${pin}>Pin this</button> to compare with it.
    </p>`;
  }
  const at = new Date(pinned.at);
  const time = at.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  const name = chosen === undefined ? undefined : answer?.packs[chosen]?.name;
  const then = pinned.answer.packs.find((pack) => pack.name === name);
  return html`<p class="pin">
    <strong>Pinned</strong> ${time}: ${pinnedWords(job, form.view.units.value)}.
    ${then?.verdict ? html`Then ${then.name} was <em>${then.verdict}</em>.` : ""}
    <button type="button" class="as-link" @click=${() => jobEditor.change("Back to pinned", backToPinned)}>Back to pinned</button>
    <button type="button" class="as-link" @click=${() => jobEditor.change("Unpin", unpinned)}>Unpin</button>
  </p>`;
}
