import { html, nothing, type TemplateResult } from "lit-html";
import { bodies } from "../../../shared/parts/bodies.ts";
import { fieldAt } from "../../editing/fieldTable/fieldAt.ts";
import { createForm, type FieldContext } from "../../fields/fieldContext.ts";
import { type QuantityFieldSpec, quantityField } from "../../fields/quantityField.ts";
import { textField } from "../../fields/textField.ts";
import { viewChoice } from "../../fields/viewChoice.ts";
import { isDriveOpen, USUAL_DAY_km, withBody, withDrive } from "./ownCar.ts";
import { usualWeights } from "./usualWeights.ts";

const PREFIX = "first-";

/** What is known so far, for below the questions. */
export interface FirstAnswer {
  readonly answer: string;
  readonly doubt: string;
}

/** Quick start: the questions of the first phone call. Each is a field of the job itself; nothing has to be sent off. */
export function questionsView(context: FieldContext, isOpen: boolean, { answer, doubt }: FirstAnswer): TemplateResult {
  const form = createForm({ ...context, idPrefix: PREFIX });
  const { jobEditor, view } = context;
  const { roadLoad } = form.job.vehicle;
  const body = bodies.find(
    ({ data }) =>
      roadLoad.kind === "physical" &&
      data.drag_coeff === roadLoad.drag_coeff &&
      data.frontalArea_m2 === roadLoad.frontalArea_m2,
  );
  const ask = (path: string, label: string, change: Partial<QuantityFieldSpec> = {}) => {
    const field = fieldAt(path);
    if (field.type !== "quantity") return form.fields(form.field(path, label));
    return form.fields(quantityField({ ...context, idPrefix: PREFIX }, path, { ...field, label, ...change }));
  };
  const weight = usualWeights[body?.id ?? ""] ?? usualWeights["saloon"];
  const { usualDay_km, longestDay_km } = form.job;
  const isTurned = longestDay_km !== undefined && longestDay_km < usualDay_km;
  const shapes = bodies.map(({ id, title }) => ({ key: id, words: title }));
  return html`<details class="first-questions" ?open=${isOpen}>
    <summary>Quick start</summary>
    <div class="jobs-body">
      <p>Whatever you don't know, write “unknown”: a usual value stands in, marked unknown.</p>
      <ol>
        <li>${form.fields(nameField(context))}</li>
        <li>${form.fields(form.field("use", "What is it for? In the client's own words"))}</li>
        <li>${ask("usualDay_km", "How far on an ordinary day?", {
          usual: { value: USUAL_DAY_km, why: "there and back to town, common practice without a source" },
        })}</li>
        <li>
          ${ask("longestDay_km", "How far on the longest day of the year?", {
            help: "Kept apart from the usual day, so that one trip a year does not size the pack. Left empty, packs are judged by the usual day alone.",
          })}
          ${
            isTurned
              ? html`<p class="to-mend">The longest day is shorter than the ordinary one: have the two changed places?</p>`
              : nothing
          }
        </li>
        <li>
          ${form.fields(
            viewChoice(
              "first-shape",
              "What shape is it?",
              body ? shapes : [{ key: "", words: "as measured" }, ...shapes],
              body?.id ?? "",
              (id) => {
                const chosen = bodies.find((each) => each.id === id);
                if (chosen)
                  jobEditor.change("Shape of the car", ({ job, drafts }) => ({ job: withBody(job, chosen), drafts }));
              },
            ),
          )}
        </li>
        <li>${ask("vehicle.kerb_kg", "What does it weigh, nobody aboard?", {
          ...(weight && {
            usual: { value: weight.usual_kg, why: `${weight.low_kg} to ${weight.high_kg} kg for ${weight.of}` },
          }),
        })}</li>
        <li>${ask("vehicle.load_kg", "What do people and luggage weigh?")}</li>
        <li>${ask("driveline.limits.gearboxInput_Nm", "What torque is the old engine or gearbox rated for?")}</li>
        <li>${ask("allowance.winter_ratio", "How many times the energy does a winter's day take, heater and all?")}</li>
        <li>${ask("vehicle.tyres.loadedRadius_mm", "What is written on the tyres?")}</li>
        <li>${ask("driveline.finalDrive_ratio", "What is the final drive?")}</li>
        <li>
          ${form.fields(
            viewChoice(
              "first-road",
              "Where does it mostly go?",
              form.job.roads.map(({ id, title }) => ({ key: id, words: title })),
              view.roadId.value,
              (id) => {
                jobEditor.editPlain("drivenRoad", id, "The road to drive");
              },
            ),
          )}
        </li>
      </ol>
      ${
        isDriveOpen(form.job)
          ? html`<p>
              <button
                type="button"
                @click=${() => jobEditor.change("Motor and packs for this car", ({ job, drafts }) => ({ job: withDrive(job), drafts }))}
              >
                Fit motor and packs to this weight and day
              </button>
            </p>`
          : nothing
      }
      <p class="sentence">${answer === "" ? "Calculating the first answer …" : answer}</p>
      <p>${doubt}</p>
      <p class="aside">All of it, and more, stands further down, with the figures.</p>
    </div>
  </details>`;
}

/** The one question that cannot stay empty, since the car is called by it all over the page. */
function nameField(context: FieldContext): TemplateResult {
  const help = "Any words that tell it from the next one: make, year, colour, or whose it is.";
  return textField({ ...context, idPrefix: PREFIX }, "vehicle.name", { type: "line", label: "What car is it?", help });
}
