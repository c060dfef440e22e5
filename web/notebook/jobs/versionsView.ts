import { html, nothing, type TemplateResult } from "lit-html";
import type { JobsPlace } from "./jobsPlace.ts";
import { clock, day } from "./moments.ts";

/** Past states of the open job, newest first, with what can be done with each. */
export function versionsView({ jobs, versions, attempt, compare, lookAt }: JobsPlace): TemplateResult {
  const id = jobs.current.value?.id;
  if (!versions || id === undefined) return html`<p class="aside">Being fetched …</p>`;
  return html`<ol class="job-list" reversed>
    ${versions.map((version) => {
      const { number, endedAt_ms, reason, isPresent } = version;
      return html`<li>
          <p>
            ${reason} <span class="aside">${day.format(endedAt_ms)}, ${clock(endedAt_ms)}${isPresent ? ", now" : ""}</span>
          </p>
          ${
            isPresent
              ? nothing
              : html`<p class="buttons">
                <button type="button" @click=${() => lookAt(version)}>
                  Look at it<span class="unseen">: ${reason}</span>
                </button>
                <button type="button" @click=${() => compare(reason, { id, version: number })}>
                  Compare<span class="unseen">: ${reason}</span>
                </button>
                <button type="button" @click=${() => attempt(() => jobs.restore(id, number))}>
                  Go back to this<span class="unseen">: ${reason}</span>
                </button>
              </p>`
          }
        </li>`;
    })}
  </ol>`;
}
