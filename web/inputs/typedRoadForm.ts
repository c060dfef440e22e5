import { html, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { Origin } from "../../shared/job/job.ts";
import { refusal } from "./attempt.ts";
import { drivingFields, drivingNote, roadTitleField } from "./drivingFields.ts";
import type { Form } from "./form.ts";
import { makeRoad } from "./makeRoad.ts";

const ID = "typed-road";
const EXAMPLE = "3 km at 50 km/h, 2 stops a km, then 12 km at 80 km/h, then 2 km at 30 km/h, 3 stops a km";

/** A road told from memory: a list of distances, speeds and stops. */
export function typedRoadForm(form: Form): TemplateResult {
  const { texts } = form.view.bench.log;
  const text = texts.value[ID] ?? "";
  const { fields, driving } = drivingFields(form, "typed");
  const { field, title } = roadTitleField(form, "typed-title", "Client's road, typed from memory");
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
    await makeRoad(form, ID, "typed", origin, (room) => room.typedRoad(text, driving, title));
  };
  return html`<p>
      No log? Type what the client tells, piece by piece. The trace is made up from it, with the acceleration you state, and
      counts as typed from memory, not as measured.
    </p>
    <div class="field is-long">
      <label for=${ID}>The road, like “${EXAMPLE}”</label>
      <span class="entry">
        <textarea
          id=${ID}
          rows="3"
          maxlength="5000"
          .value=${live(text)}
          @input=${(event: Event) => {
            texts.value = { ...texts.value, [ID]: (event.target as HTMLTextAreaElement).value };
          }}
        ></textarea>
      </span>
    </div>
    <div class="fields">${fields} ${field}</div>
    <p class="buttons">
      <button type="button" class="main" ?disabled=${!driving} @click=${make}>Make a road of it</button>
    </p>
    ${refusal(form, ID)}`;
}
