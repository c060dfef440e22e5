import { html, nothing, type TemplateResult } from "lit-html";
import { reminderSentence } from "../../store/files/fileReminder.ts";
import { placeSentence, statusSentence } from "../../store/saveStatus.ts";
import type { JobsPlace } from "./jobsPlace.ts";
import { clock } from "./moments.ts";

/** The line that says whether the job is saved, and what else the person must know about it right now. */
export function keepingView({ jobs, attempt, isLooking }: JobsPlace): TemplateResult {
  const { status, place, conflict, reminder, news } = jobs;
  const isBad = status.value.kind === "refused" || place.value.kind === "memory";
  const clash = conflict.value;
  return html`<div class="keeping" role="status">
    <p class=${isBad ? "is-bad" : ""}>${statusSentence(status.value, place.value, clock)}</p>
    ${place.value.kind === "memory" ? html`<p>${placeSentence(place.value)}</p>` : nothing}
    ${
      isBad
        ? html`<p class="buttons">
          <button type="button" @click=${() => attempt(() => jobs.exportFile())}>Save it as a file now</button>
        </p>`
        : nothing
    }
    ${reminder.value ? html`<p>${reminderSentence(reminder.value)}</p>` : nothing}
    ${
      news.value === undefined || isLooking
        ? nothing
        : html`<p class="news">
          ${news.value} <button type="button" @click=${() => jobs.dismissNews()}>Seen</button>
        </p>`
    }
    ${
      clash === undefined
        ? nothing
        : html`<div class="news">
          <p>
            ${
              clash.kind === "changed"
                ? "Another tab changed this job while you did. What you have here is kept as a copy. Which will you go on with?"
                : "Another tab deleted this job. What you have here is kept as a copy. Which will you go on with?"
            }
          </p>
          <p class="buttons">
            <button type="button" @click=${() => jobs.keepMine()}>My copy, here</button>
            <button type="button" @click=${() => attempt(() => jobs.takeTheirs())}>What the other tab has</button>
          </p>
        </div>`
    }
  </div>`;
}
