import { html, type TemplateResult } from "lit-html";
import { refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { roadQuantity } from "../../fields/roadField.ts";
import type { PlannedRoute } from "../../worker/roads/roadsApi.ts";
import { drivingFields, drivingNote, roadTitleField } from "./drivingFields.ts";
import { makeRoad } from "./makeRoad.ts";

const ID = "planned-route";

/** A route without times: it says where, not how fast, so the speed is asked for; or the time between its rows. */
export function plannedRouteForm(form: Form, _route: PlannedRoute, words: string): TemplateResult {
  const { log } = form.view.staging;
  const speed = roadQuantity(form, {
    id: "route-speed",
    label: "Speed between stops",
    kind: "speed",
    usual: "50 km/h",
    min: 5,
    max: 200,
  });
  const stops = roadQuantity(form, {
    id: "route-stops",
    label: "Stops in a kilometre",
    kind: "number",
    usual: "0.5",
    min: 0,
    max: 20,
  });
  const { fields, driving } = drivingFields(form, "route");
  const { field, title, problem } = roadTitleField(form, "route-title", "Client's planned route");
  const interval = roadQuantity(form, {
    id: "route-interval",
    label: "Time from one row to the next",
    kind: "duration",
    usual: "",
    min: 0.01,
    max: 3600,
    mayBeEmpty: true,
  });
  const make = async () => {
    const [speed_kmh, stopsPerKm] = [speed.value, stops.value];
    if (speed_kmh === undefined || stopsPerKm === undefined || !driving) return;
    const note = `a planned route of ${words}, driven at ${speed_kmh} km/h, ${stopsPerKm} stops a km; ${drivingNote(driving)}`;
    await makeRoad(form, ID, "typed", { from: "guessed", note }, (roads) =>
      roads.routeRoad(speed_kmh, stopsPerKm, driving, title),
    );
  };
  return html`<p>
      <strong>A planned route, not a drive:</strong> positions without times, ${words}. Say how fast it is driven; that is
      then assumed, not measured.
    </p>
    <div class="fields">${speed.field} ${stops.field} ${fields} ${field}</div>
    <p class="buttons"><button
        type="button"
        class="main"
        ?disabled=${(speed.problem ?? stops.problem ?? problem) !== undefined || !driving}
        @click=${make}
      >
        Make it a road of this job
      </button></p>
    ${refusal(form, ID)}
    <p>Or, where the rows were written at an even pace, the time between them makes a drive of it:</p>
    <div class="fields">
      ${interval.field}
      <p class="buttons">
        <button
          type="button"
          ?disabled=${interval.value === undefined}
          @click=${() => void log.answer(0, { interval_s: interval.value })}
        >
          Read it as a drive
        </button>
      </p>
    </div>`;
}
