import { html, nothing, type TemplateResult } from "lit-html";
import { drivenRoad } from "../../shared/job/job.ts";
import { withFirst } from "../editing/listEdits.ts";
import type { Form } from "../fields/fieldContext.ts";

const ceilings = [0.8, 0.85, 0.9, 0.95, 1];

/** The few other things that are talked about. Each is a field of the job, or one choice for all its packs. */
export function controlsView(form: Form): TemplateResult {
  const { job, jobEditor } = form;
  const ceiling = job.packs[0].ceiling_frac;
  const chargeTo = (event: Event) => {
    const ceiling_frac = Number((event.target as HTMLSelectElement).value);
    jobEditor.change("Charge to", (state) => ({
      ...state,
      job: { ...state.job, packs: state.job.packs.map((pack) => ({ ...pack, ceiling_frac })) },
    }));
  };
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  const isCommon = job.packs.every(({ ceiling_frac }) => ceiling_frac === ceiling);
  const offered = ceilings.includes(ceiling) ? ceilings : [...ceilings, ceiling].sort((a, b) => a - b);
  return html`<div class="controls-grid">
    ${form.field("longestDay_km", "Longest day")} ${form.field("longestDaysAYear", "Times a year")}
    <div class="field">
      <label for="answer-ceiling">Charge to</label>
      <span class="entry">
        <select id="answer-ceiling" @change=${chargeTo}>
          ${isCommon ? "" : html`<option value="" selected disabled>differs by pack</option>`}
          ${offered.map((share) => html`<option value=${share} .selected=${isCommon && share === ceiling}>${percent(share)}</option>`)}
        </select>
      </span>
      <span class="as-printed">${isCommon ? percent(ceiling) : "differs by pack"}</span>
    </div>
    <div class="field is-road">
      <label for="answer-road">Road</label>
      <span class="entry">
        <select
          id="answer-road"
          @change=${(event: Event) => {
            jobEditor.editPlain("drivenRoad", (event.target as HTMLSelectElement).value, "The road to drive");
            jobEditor.settle();
          }}
        >
          ${job.roads.map(({ id, title }) => html`<option value=${id} .selected=${id === drivenRoad(job).id}>${title}</option>`)}
        </select>
      </span>
      <span class="as-printed">${drivenRoad(job).title}</span>
    </div>
    ${
      job.supplies.length > 1
        ? html`<div class="field is-supply">
            <label for="answer-supply">Charge at</label>
            <span class="entry">
              <select
                id="answer-supply"
                @change=${(event: Event) => {
                  const { selectedIndex } = event.target as HTMLSelectElement;
                  jobEditor.change("Charge at", (state) => withFirst(state, "supplies", selectedIndex));
                }}
              >
                ${job.supplies.map(({ name }, i) => html`<option .selected=${i === 0}>${name}</option>`)}
              </select>
            </span>
            <span class="as-printed">${job.supplies[0].name}</span>
          </div>`
        : nothing
    }
    ${form.field("vehicle.load_kg", "Load aboard")} ${form.field("allowance.winter_ratio", "Winter use, ×")}
    ${form.field("allowance.aged_frac", "At ten years")}
  </div>`;
}
