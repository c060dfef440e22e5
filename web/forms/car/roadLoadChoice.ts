import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { fieldList } from "../../editing/fieldTable/fieldList.ts";
import type { Form } from "../../fields/fieldContext.ts";

type RoadLoad = Job["vehicle"]["roadLoad"];

/** How the drag is known: from body and tyres, or from a coast-down; with the fields of that way. */
export function roadLoadChoice(form: Form): TemplateResult {
  const { kind } = form.job.vehicle.roadLoad;
  const choose = (event: Event) => {
    const roadLoad = (event.target as HTMLSelectElement).value === "coastDown" ? coastDown(form.job) : physical();
    form.jobEditor.change("Where the drag comes from", ({ job, drafts }) => ({
      job: { ...job, vehicle: { ...job.vehicle, roadLoad } },
      drafts: Object.fromEntries(Object.entries(drafts).filter(([path]) => !path.startsWith("vehicle.roadLoad."))),
    }));
  };
  return html`<div class="fields">
    <div class="field">
      <label for="field-road-load-kind">The drag comes from</label>
      <span class="entry">
        <select id="field-road-load-kind" @change=${choose}>
          <option value="physical" .selected=${kind === "physical"}>body and tyres</option>
          <option value="coastDown" .selected=${kind === "coastDown"}>a coast-down</option>
        </select>
      </span>
      <span class="as-printed">${kind === "physical" ? "body and tyres" : "a coast-down"}</span>
    </div>
    ${keysOf(kind).map((key) => form.field(`vehicle.roadLoad.${key}`))}
  </div>`;
}

function keysOf(kind: RoadLoad["kind"]): string[] {
  return kind === "physical"
    ? ["drag_coeff", "frontalArea_m2", "wheelDrag_Nm"]
    : ["f0_N", "f1_Npkmh", "f2_Npkmh2", "mass_kg"];
}

function usualOf(key: string): number {
  const field = fieldList[`vehicle.roadLoad.${key}`];
  return field?.type === "quantity" ? (field.usual?.value ?? 0) : 0;
}

function physical(): RoadLoad {
  return {
    kind: "physical",
    drag_coeff: usualOf("drag_coeff"),
    frontalArea_m2: usualOf("frontalArea_m2"),
    wheelDrag_Nm: usualOf("wheelDrag_Nm"),
  };
}

/** A small saloon's coast-down to start from: common practice, no source; to be typed over with the measured one. */
function coastDown({ vehicle }: Job): RoadLoad {
  const mass_kg = vehicle.arriving_kg + vehicle.load_kg;
  return { kind: "coastDown", f0_N: Math.round(0.13 * mass_kg), f1_Npkmh: 0.5, f2_Npkmh2: 0.037, mass_kg };
}
