import { html, nothing, type TemplateResult } from "lit-html";
import { messageIn } from "../../../shared/quantity/message.ts";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { type CoastDown, coastDownNotes } from "../../../sim/index.ts";
import { withoutStaged } from "../../editing/stagedTexts.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { COASTDOWN } from "../../fields/staging.ts";
import { wordsField } from "../../fields/wordsField.ts";
import { type DayKey, dayFigures, type ReadCoastDown, readCoastDown, takeCoastDown } from "./coastDown.ts";

const ID = "coastdown";
const EXAMPLES = {
  km: "90-70 km/h 11.2 11.5 / 12.0 s; 50-30 km/h 19.8 / 20.4 s",
  miles: "60-50 mph 9.6 s; 30-20 mph 19.8 s",
};

/** Times of a coast-down as the workshop has them, what they come to, and a button that takes it into the job. */
export function coastDownForm(form: Form): TemplateResult {
  const { coastDown } = form.view.staging;
  const units = form.view.units.value;
  const texts = coastDown.value;
  const read = readCoastDown(texts, units);
  const write = (key: string) => (typed: string) => {
    coastDown.value = { ...coastDown.value, [key]: typed };
  };
  return html`<p>
      Let the car roll in neutral on a level, straight, empty road, from fast to slow, both ways, brakes not dragging. Time how long
      it takes from one speed to another: one fast band and one slow one are enough. Several runs with spaces between, the other way
      behind a slash.
    </p>
    ${wordsField({
      id: "coastdown-bands",
      label: `Times, like “${EXAMPLES[units === "metric" ? "km" : "miles"]}”`,
      text: texts["bands"] ?? "",
      rows: 3,
      problem: read.problems["bands"],
      understood:
        read.bands.length > 0 ? `${read.bands.length} ${read.bands.length === 1 ? "band" : "bands"}` : undefined,
      write: write("bands"),
      leave: () => form.jobEditor.settle(),
    })}
    <div class="fields">
      ${(Object.keys(dayFigures) as DayKey[]).map((key) => {
        const { label, usualWords } = dayFigures[key];
        return wordsField({
          id: `coastdown-${key}`,
          label: usualWords === "" ? label : `${label} (empty: ${usualWords})`,
          text: texts[key] ?? "",
          problem: read.problems[key],
          understood: read.understood[key],
          write: write(key),
          leave: () => form.jobEditor.settle(),
        });
      })}
    </div>
    <div role="status">${outcome(form, read, texts["bands"] ?? "")}</div>
    ${refusal(form, ID)}
    <p class="aside">A second person reads the watch. Never switch off what the brakes or the steering need.</p>`;
}

function outcome(form: Form, { problems, missing, bands, found }: ReadCoastDown, typed: string) {
  if (typed.trim() === "") return nothing;
  if (!found) {
    const wrong = Object.keys(problems).length;
    const wanted = missing.length > 0 ? `Still wanted: ${missing.join(", ")}.` : "";
    return html`<p class="aside">${wrong > 0 ? `${wrong} wrong above. ` : ""}${wanted}</p>`;
  }
  const take = () =>
    attempt(form, ID, "Drag by a coast-down", (at) => withoutStaged(takeCoastDown(at, found, typed), COASTDOWN));
  const notes = coastDownNotes(bands, found).map((note) => messageIn(note, form.view.units.value));
  return html`<div class="offer">
    <p>${resultWords(form, found)}</p>
    <ul>${notes.map((note) => html`<li>${note.charAt(0).toUpperCase()}${note.slice(1)}.</li>`)}</ul>
    <p class="buttons"><button type="button" @click=${take}>Use this coast-down</button></p>
  </div>`;
}

/** What was found, with the band that the stopwatch alone makes. */
function resultWords(form: Form, { dragArea_m2, rolling_coeff, f0_N, f2_Npmps2, mass_kg }: CoastDown): string {
  const units = form.view.units.value;
  const q = (kind: Parameters<typeof writeQuantity>[0], value: number, digits?: number) =>
    writeQuantity(kind, value, units, digits);
  const off = (value: CoastDown["f0_N"]) =>
    value.value > 0 ? `, ± ${Math.round((100 * (value.high - value.value)) / value.value)} %` : "";
  const at = 80;
  const force_N = f0_N.value + f2_Npmps2.value * (at * MPS_PER_KMH) ** 2;
  return `Drag area ${q("area", dragArea_m2.value)}${off(dragArea_m2)}; rolling coefficient ${q("coefficient", rolling_coeff.value)}${off(rolling_coeff)}, by the stopwatch alone. Brought to ${q("temperature", 20)} and calm air, for ${q("mass", mass_kg)}: ${q("force", f0_N.value)} at a crawl, ${q("force", force_N)} at ${q("speed", at)}.`;
}
