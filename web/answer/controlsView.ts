import { html, nothing, type TemplateResult } from "lit-html";
import { drivenRoad } from "../../shared/job/drivenRoad.ts";
import { withFirst } from "../editing/listEdits.ts";
import type { Form } from "../fields/fieldContext.ts";

const DIFFERS = "differs by pack";
const ceilings = [0.8, 0.85, 0.9, 0.95, 1];

/** The few other things that are talked about. Each is a field of the job, or one choice for all its packs. */
export function controlsView(form: Form): TemplateResult {
  const { job, jobEditor } = form;
  const ceiling = job.packs[0].ceiling_frac;
  const chargeTo = (ceiling_frac: number) => {
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
    ${choice({
      id: "answer-ceiling",
      label: "Charge to",
      printed: isCommon ? percent(ceiling) : DIFFERS,
      options: html`${isCommon ? "" : html`<option value="" selected disabled>${DIFFERS}</option>`}
      ${offered.map((share) => html`<option value=${share} .selected=${isCommon && share === ceiling}>${percent(share)}</option>`)}`,
      choose: ({ value }) => chargeTo(Number(value)),
    })}
    ${choice({
      id: "answer-road",
      label: "Road",
      look: "is-road",
      printed: drivenRoad(job).title,
      options: job.roads.map(
        ({ id, title }) => html`<option value=${id} .selected=${id === drivenRoad(job).id}>${title}</option>`,
      ),
      choose: ({ value }) => {
        jobEditor.editPlain("drivenRoad", value, "The road to drive");
        jobEditor.settle();
      },
    })}
    ${
      job.supplies.length > 1
        ? choice({
            id: "answer-supply",
            label: "Charge at",
            look: "is-supply",
            printed: job.supplies[0].name,
            options: job.supplies.map(({ name }, i) => html`<option .selected=${i === 0}>${name}</option>`),
            choose: ({ selectedIndex }) =>
              jobEditor.change("Charge at", (state) => withFirst(state, "supplies", selectedIndex)),
          })
        : nothing
    }
    ${form.field("vehicle.load_kg", "Load aboard")} ${winterField(form)} ${form.field("allowance.aged_frac", "At ten years")}
  </div>`;
}

/** The winter's day where it is driven, else the factor that stands for it. */
function winterField(form: Form): TemplateResult {
  if (!form.job.conditions?.winter) return form.field("allowance.winter_ratio", "Winter use, ×");
  const { heat } = form.job.conditions.winter;
  return html`${form.field("conditions.winter.temperature_degC", "Winter day")}
  ${heat.kind === "none" ? nothing : form.field("conditions.winter.heat.power_kW", "Heater")}`;
}

interface Choice {
  readonly id: string;
  readonly label: string;
  readonly look?: string;
  /** What stands on paper. */
  readonly printed: string;
  readonly options: TemplateResult | readonly TemplateResult[];
  choose(select: HTMLSelectElement): void;
}

/** One list to choose from, and what of it is printed. */
function choice({ id, label, look = "", printed, options, choose }: Choice): TemplateResult {
  return html`<div class="field ${look}">
    <label for=${id}>${label}</label>
    <span class="entry">
      <select id=${id} @change=${(event: Event) => choose(event.target as HTMLSelectElement)}>
        ${options}
      </select>
    </span>
    <span class="as-printed">${printed}</span>
  </div>`;
}
