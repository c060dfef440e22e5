import { html, type TemplateResult } from "lit-html";
import type { Origin } from "../../../shared/job/job.ts";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { firstOf, wordsField } from "../../fields/wordsField.ts";
import { problemWords } from "../../log/logText.ts";
import { durationWords } from "../../log/readingWords.ts";
import { drivingFields, drivingNote, roadTitleField } from "./drivingFields.ts";
import { makeRoad } from "./makeRoad.ts";

const ID = "typed-road";
/** Where it is kept how the text was read when its field was left. */
const READING = "typed-road-reading";
const EXAMPLES = {
  km: "3 km at 50 km/h, 2 stops a km, then 12 km at 80 km/h, then 2 km at 30 km/h, 3 stops a km",
  miles: "2 miles at 30 mph, 3 stops a mile, then 8 miles at 50 mph, then 1 mile at 20 mph, 5 stops a mile",
};

/** Only for a look at what was typed, while a field of the driving is not mended yet. */
const calm = { acceleration_mps2: 0.9, braking_mps2: 1, stand_s: 15 };

/** A road told from memory: a list of distances, speeds and stops. */
export function typedRoadForm(form: Form): TemplateResult {
  const { log, refused, understood } = form.view.staging;
  const { texts } = log;
  const text = texts.value[ID] ?? "";
  const { fields, driving } = drivingFields(form, "typed");
  const { field, title, problem } = roadTitleField(form, "typed-title", "Client's road, typed from memory");
  const write = (typed: string) => {
    const { [READING]: _reading, ...others } = understood.value;
    const { [READING]: _refusal, ...kept } = refused.value;
    texts.value = { ...texts.value, [ID]: typed };
    understood.value = others;
    refused.value = kept;
  };
  /** Reads what was typed as the road it would be, and says so; the road itself is made when that is asked for. */
  const look = async (typed: string) => {
    form.jobEditor.settle();
    if (typed.trim() === "") return;
    // Where the reader itself cannot be had, the button says so.
    const answer = await log.roads.typedRoad(typed, driving ?? calm, "typed").catch(() => undefined);
    if (!answer || texts.value[ID] !== typed) return;
    if (answer.kind === "refused") {
      refused.value = { ...refused.value, [READING]: firstOf(answer.problems.map(problemWords)) };
    } else if (answer.kind === "done") {
      const { distance_m, duration_s } = answer.value;
      const length = writeQuantity("distance", distance_m / M_PER_KM, form.view.units.value);
      understood.value = { ...understood.value, [READING]: `${length} in ${durationWords(duration_s)}` };
    }
  };
  const make = async () => {
    if (!driving) return;
    const typed = text
      .trim()
      .replace(/\s*\n\s*/g, "; ")
      .slice(0, 200);
    const origin: Origin = {
      from: "guessed",
      note: `typed from memory; ${drivingNote(driving)}`,
      ...(typed !== "" && { typed }),
    };
    await makeRoad(form, ID, "typed", origin, (roads) => roads.typedRoad(text, driving, title));
  };
  return html`<p>
      No log? Type what the client tells, piece by piece. The trace is made up from it, with the acceleration you state, and
      counts as typed from memory, not as measured.
    </p>
    ${wordsField({
      id: ID,
      label: `The road, like “${EXAMPLES[form.view.units.value === "metric" ? "km" : "miles"]}”`,
      text,
      rows: 3,
      problem: text === "" ? undefined : refused.value[READING],
      understood: understood.value[READING],
      write,
      leave: (typed) => void look(typed),
    })}
    <div class="fields">${fields} ${field}</div>
    <p class="buttons">
      <button type="button" class="main" ?disabled=${!driving || problem !== undefined} @click=${make}>Use this road</button>
    </p>
    ${refusal(form, ID)}`;
}
