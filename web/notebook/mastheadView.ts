import { html, nothing, type TemplateResult } from "lit-html";
import { drivenRoad } from "../../shared/job/job.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import type { JobEditor } from "../editing/jobEditor.ts";
import type { FieldContext } from "../fields/fieldContext.ts";

export interface Masthead {
  readonly jobEditor: JobEditor;
  readonly context: FieldContext;
  /** The finding of the last question, said at the top too; empty while it is not known. */
  readonly answer: string;
  /** What speaks against promising it yet, if anything. */
  readonly doubt: string;
  readonly say: (words: string) => void;
}

const habits: Readonly<Record<UnitHabit, string>> = {
  metric: "km, kg, Nm, °C",
  british: "miles, lb, lb ft, °C",
  american: "miles, lb, lb ft, °F",
};

/** The head of the page: whose job it is, the answer in short, undo and redo, and the units to read in. */
export function mastheadView({ jobEditor, context, answer, doubt, say }: Masthead): TemplateResult {
  const job = jobEditor.job.value;
  const step = (how: () => string | undefined, done: string) => () => {
    context.typing.value = undefined;
    const what = how();
    if (what !== undefined) say(`${done}: ${what}.`);
  };
  const button = (words: string, what: string | undefined, click: () => void) =>
    html`<button type="button" ?disabled=${what === undefined} @click=${click}>
      ${words}${what === undefined ? nothing : html` <span class="what">${what}</span>`}
    </button>`;
  return html`<p class="name">Bellhousing</p>
    <h1>${job.title}</h1>
    ${job.isInvented ? html`<p class="invented">An invented job to look at and change. It is nobody's car.</p>` : nothing}
    <p class="answer">
      <a href="#whichIsEnough">The answer so far</a> ${answer === "" ? "is being worked out …" : answer}
      ${doubt === "" ? nothing : html`<span class="doubt">${doubt}</span>`}
      <span class="aside">
        The road: ${drivenRoad(job).title}${job.roads.length > 1 ? html`, one of <a href="#theRoad">${job.roads.length}</a>` : nothing}.
      </span>
    </p>
    ${
      Object.values(jobEditor.drafts.value).some(({ problem }) => problem !== undefined)
        ? html`<p class="aside">Fields that are still to mend count with the last value that could be read.</p>`
        : nothing
    }
    <div class="tools">
      ${button("Take back", jobEditor.undoes.value, step(jobEditor.undo, "Taken back"))}
      ${button("Do again", jobEditor.redoes.value, step(jobEditor.redo, "Done again"))}
      ${
        job.hiddenSections.length === 0
          ? nothing
          : html`<button
              type="button"
              aria-pressed=${context.view.isForClient.value ? "true" : "false"}
              @click=${() => {
                context.view.isForClient.value = !context.view.isForClient.value;
              }}
            >
              ${context.view.isForClient.value ? "Show all sections" : "Show what is for the client"}
            </button>`
      }
      <label>
        Read in
        <select
          ?disabled=${jobEditor.isLooking.value}
          @change=${(event: Event) => {
            jobEditor.editPlain("units", (event.target as HTMLSelectElement).value, "the units to read in");
          }}
        >
          ${Object.entries(habits).map(
            ([habit, words]) =>
              html`<option value=${habit} .selected=${context.view.units.value === habit}>${words}</option>`,
          )}
        </select>
      </label>
    </div>`;
}
