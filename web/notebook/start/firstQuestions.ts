import { html, nothing, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import { bodies } from "../../../shared/parts/bodies.ts";
import { heaters } from "../../../shared/parts/heaters.ts";
import type { WorthMeasuring } from "../../../sim/index.ts";
import { fieldAt } from "../../editing/fieldTable/fieldAt.ts";
import { createForm, type FieldContext } from "../../fields/fieldContext.ts";
import { type QuantityFieldSpec, quantityField } from "../../fields/quantityField.ts";
import { textField } from "../../fields/textField.ts";
import { viewChoice } from "../../fields/viewChoice.ts";
import { boughtOf, boughtPaths, boughtWords, withBought } from "./alreadyBought.ts";
import { measureFirstView } from "./measureFirst.ts";
import { isDriveOpen, USUAL_DAY_km, withBody, withDrive } from "./ownCar.ts";
import { peopleAboard, withPeople } from "./people.ts";
import { placeChoices, placeOf, withPlace } from "./placeToCharge.ts";
import { usualWeights } from "./usualWeights.ts";
import { heatingOf, withHeating } from "./winterHeat.ts";

const PREFIX = "first-";

/** What is known so far, for below the questions. */
export interface FirstAnswer {
  readonly answer: string;
  readonly doubt: string;
  readonly measureFirst: readonly WorthMeasuring[];
  /** Why there is none. */
  readonly failure: { readonly words: string } | undefined;
}

/** Quick start: the questions of the first phone call. Each is a field of the job itself; nothing has to be sent off. */
export function questionsView(
  context: FieldContext,
  { answer, doubt, measureFirst, failure }: FirstAnswer,
): TemplateResult {
  const form = createForm({ ...context, idPrefix: PREFIX });
  const { jobEditor, view } = context;
  const { job } = form;
  const body = bodyOf(job);
  const ask = (path: string, label: string, change: Partial<QuantityFieldSpec> = {}) => {
    const field = fieldAt(path);
    if (field.type !== "quantity") return form.fields(form.field(path, label));
    return form.fields(quantityField({ ...context, idPrefix: PREFIX }, path, { ...field, label, ...change }));
  };
  const pick = (
    id: string,
    label: string,
    choices: readonly { readonly key: string; readonly words: string }[],
    chosen: string | undefined,
    made: (key: string) => Job,
  ) => {
    const open = chosen === undefined ? [{ key: "", words: "as entered below" }] : [];
    return form.fields(
      viewChoice(`first-${id}`, label, [...open, ...choices], chosen ?? "", (key) => {
        if (key !== "") jobEditor.change(label, ({ drafts }) => ({ job: made(key), drafts }));
      }),
    );
  };
  const weight = usualWeights[body?.id ?? ""] ?? usualWeights["saloon"];
  const { usualDay_km, longestDay_km } = job;
  const isTurned = longestDay_km !== undefined && longestDay_km < usualDay_km;
  const bought = boughtOf(job);
  return html`<details class="first-questions">
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
          ${pick(
            "road",
            "Where does it mostly go?",
            job.roads.map(({ id, title }) => ({ key: id, words: title })),
            view.roadId.value,
            (id) => ({ ...job, drivenRoad: id }),
          )}
        </li>
        <li>${ask("requirement.startHill_ratio", "What is the steepest hill it must start on?")}</li>
        <li>${ask("requirement.topSpeed_kmh", "What is the fastest it is really driven?")}</li>
        <li>
          ${pick(
            "shape",
            "What shape is it?",
            bodies.map(({ id, title }) => ({ key: id, words: title })),
            body?.id,
            (id) => withBody(job, bodies.find((each) => each.id === id) ?? bodies[0]),
          )}
        </li>
        <li>${ask("vehicle.kerb_kg", "What does it weigh, nobody aboard?", {
          ...(weight && {
            usual: { value: weight.usual_kg, why: `${weight.low_kg} to ${weight.high_kg} kg for ${weight.of}` },
          }),
        })}</li>
        <li>${pick("people", "How many are aboard?", peopleChoices, peopleAboard(job), (key) => withPeople(job, Number(key)))}</li>
        <li>
          ${pick(
            "heating",
            "How is it heated in winter?",
            heaters.map(({ id, words }) => ({ key: id, words })),
            heatingOf(job)?.id,
            (id) => withHeating(job, heaters.find((each) => each.id === id) ?? heaters[0]),
          )}
          ${
            job.conditions?.winter
              ? form.fields(form.field("conditions.winter.temperature_degC", "How cold is a usual winter's day?"))
              : html`<p class="hint">A winter's day is taken as ${job.allowance.winter_ratio} times today's energy.</p>`
          }
        </li>
        <li>${pick("supply", "Where will it be charged?", placeChoices(job), placeOf(job), (key) => withPlace(job, key))}</li>
        <li>${ask("driveline.limits.gearboxInput_Nm", "What torque is the old engine or gearbox rated for?")}</li>
        <li>
          ${pick("bought", "What is already bought?", boughtChoices, bought, (key) => withBought(job, key))}
          ${bought === "none" ? nothing : form.fields(...boughtPaths(job, bought).map((path) => form.field(path)))}
        </li>
      </ol>
      ${
        isDriveOpen(job)
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
      <p class="sentence">${failure ? failure.words : answer === "" ? "Calculating the first answer …" : answer}</p>
      <p class="doubt">${doubt}</p>
      ${measureFirstView(measureFirst, view.units.value)}
      <p class="aside">Every other input is under Workings, with a usual value until you enter one.</p>
    </div>
  </details>`;
}

const peopleChoices = [1, 2, 3, 4, 5, 6].map((count) => ({
  key: String(count),
  words: count === 1 ? "the driver alone" : `${count} people`,
}));
const boughtChoices = Object.entries(boughtWords).map(([key, words]) => ({ key, words }));

/** The shape whose drag the job has, unless it was measured. */
function bodyOf({ vehicle: { roadLoad } }: Job) {
  if (roadLoad.kind !== "physical") return undefined;
  const { drag_coeff, frontalArea_m2 } = roadLoad;
  return bodies.find(({ data }) => data.drag_coeff === drag_coeff && data.frontalArea_m2 === frontalArea_m2);
}

/** The one question that cannot stay empty, since the car is called by it all over the page. */
function nameField(context: FieldContext): TemplateResult {
  const help = "Any words that tell it from the next one: make, year, colour, or whose it is.";
  return textField({ ...context, idPrefix: PREFIX }, "vehicle.name", { type: "line", label: "What car is it?", help });
}
