import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { fieldList } from "../../editing/fieldTable/fieldList.ts";
import type { Form } from "../../fields/fieldContext.ts";

type RoadLoad = Job["vehicle"]["roadLoad"];

/** How the drag is known: from body and tyres, as one drag area, or from a coast-down; with the fields of that way. */
export function roadLoadChoice(form: Form): TemplateResult {
  const { kind } = form.job.vehicle.roadLoad;
  const choose = (event: Event) => {
    const chosen = ways.find(({ key }) => key === (event.target as HTMLSelectElement).value);
    if (!chosen) return;
    form.jobEditor.change("Where the drag comes from", ({ job, drafts }) => ({
      job: { ...job, vehicle: { ...job.vehicle, roadLoad: chosen.make(job) } },
      drafts: Object.fromEntries(Object.entries(drafts).filter(([path]) => !path.startsWith("vehicle.roadLoad."))),
    }));
  };
  const way = ways.find(({ key }) => key === kind);
  return html`<div class="fields">
    <div class="field">
      <label for="field-road-load-kind">The drag comes from</label>
      <span class="entry">
        <select id="field-road-load-kind" @change=${choose}>
          ${ways.map(({ key, words }) => html`<option value=${key} .selected=${key === kind}>${words}</option>`)}
        </select>
      </span>
      <span class="as-printed">${way?.words}</span>
    </div>
    ${way?.fields.map((key) => form.field(`vehicle.roadLoad.${key}`))}
  </div>`;
}

interface Way {
  readonly key: RoadLoad["kind"];
  readonly words: string;
  readonly fields: readonly string[];
  readonly make: (job: Job) => RoadLoad;
}

const ways: readonly Way[] = [
  {
    key: "physical",
    words: "body and tyres",
    fields: ["drag_coeff", "frontalArea_m2", "wheelDrag_Nm"],
    make: () => physical(),
  },
  { key: "dragArea", words: "one drag area, and tyres", fields: ["dragArea_m2", "wheelDrag_Nm"], make: dragArea },
  {
    key: "coastDown",
    words: "a coast-down",
    fields: ["f0_N", "f1_Npkmh", "f2_Npkmh2", "mass_kg"],
    make: coastDown,
  },
];

/** The same drag as one figure, where the job has both factors of it. */
function dragArea({ vehicle: { roadLoad } }: Job): RoadLoad {
  const isKnown = roadLoad.kind === "physical";
  const dragArea_m2 = isKnown ? roadLoad.drag_coeff * roadLoad.frontalArea_m2 : usualOf("dragArea_m2");
  return {
    kind: "dragArea",
    dragArea_m2: Number(dragArea_m2.toPrecision(3)),
    wheelDrag_Nm: isKnown ? roadLoad.wheelDrag_Nm : usualOf("wheelDrag_Nm"),
  };
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
  const mass_kg = vehicle.kerb_kg + vehicle.load_kg;
  return { kind: "coastDown", f0_N: Math.round(0.13 * mass_kg), f1_Npkmh: 0.5, f2_Npkmh2: 0.037, mass_kg };
}
