import { html, nothing, type TemplateResult } from "lit-html";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import type { JobEditor } from "../editing/jobEditor.ts";
import type { FieldContext } from "../fields/fieldContext.ts";

export interface Bar {
  readonly jobEditor: JobEditor;
  readonly context: FieldContext;
  readonly announce: (words: string) => void;
  readonly newJob: () => void;
  readonly share: () => void;
  readonly print: () => void;
  /** The page was sent to be looked at: it makes no jobs and is sent no further. */
  readonly isShared: boolean;
}

const habits: Readonly<Record<UnitHabit, string>> = {
  metric: "km, kg",
  british: "miles, lb, °C",
  american: "miles, lb, °F",
};

/** What can be done with the job, in one line: undo, redo, a new one, sharing, printing, units. */
export function barView({ jobEditor, context, announce, newJob, share, print, isShared }: Bar): TemplateResult {
  const job = jobEditor.job.value;
  const step = (how: () => string | undefined, done: string) => () => {
    context.typing.value = undefined;
    const what = how();
    if (what !== undefined) announce(`${done}: ${what}.`);
  };
  const button = (words: string, what: string | undefined, click: () => void) =>
    html`<button type="button" ?disabled=${what === undefined} title=${what ?? nothing} @click=${click}>
      ${words}${what === undefined ? nothing : html`<span class="unseen"> ${what}</span>`}
    </button>`;
  const { isForClient } = context.view;
  const isLooking = jobEditor.isLooking.value;
  return html`${button("Undo", jobEditor.undoes.value, step(jobEditor.undo, "Undone"))}
    ${button("Redo", jobEditor.redoes.value, step(jobEditor.redo, "Redone"))}
    ${
      isShared
        ? nothing
        : html`<button type="button" class="new-job" ?disabled=${isLooking} @click=${newJob}>New job</button>
            <button type="button" ?disabled=${isLooking} @click=${share}>Share</button>`
    }
    <button type="button" @click=${print}>Print</button>
    ${
      job.hiddenSections.length === 0 || isShared
        ? nothing
        : html`<button
            type="button"
            aria-pressed=${isForClient.value ? "true" : "false"}
            @click=${() => {
              isForClient.value = !isForClient.value;
            }}
          >
            ${isForClient.value ? "Show all" : "For the client"}
          </button>`
    }
    <label>
      Units
      <select
        ?disabled=${isLooking}
        @change=${(event: Event) => {
          jobEditor.editPlain("units", (event.target as HTMLSelectElement).value, "the units");
        }}
      >
        ${Object.entries(habits).map(
          ([habit, words]) =>
            html`<option value=${habit} .selected=${context.view.units.value === habit}>${words}</option>`,
        )}
      </select>
    </label>`;
}
