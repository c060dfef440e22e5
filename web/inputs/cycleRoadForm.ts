import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { Road } from "../../shared/job/road.ts";
import { InputError } from "../../shared/problems.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { standardCycles } from "../../sim/index.ts";
import { refusal } from "./attempt.ts";
import { roadTitleField } from "./drivingFields.ts";
import type { Form } from "./form.ts";
import { makeRoad } from "./makeRoad.ts";
import { readHills } from "./readHills.ts";
import { roadQuantity } from "./roadField.ts";
import { viewChoice } from "./viewChoice.ts";

const ID = "cycle-road";
const LEVEL = "level";
const TYPED = "typed";

/** A standard cycle as a road: once or repeated to the day's distance, level or with hills laid under it. */
export function cycleRoadForm(form: Form): TemplateResult {
  const { texts } = form.view.bench.log;
  const put = (key: string, text: string) => {
    texts.value = { ...texts.value, [key]: text };
  };
  const units = form.view.units.value;
  const cycles = standardCycles.flatMap(({ id, title, phases }) => [
    { key: id, words: title },
    ...phases.map((phase) => ({ key: `${id}:${phase.id}`, words: `${title}, ${phase.title} only` })),
  ]);
  const cycle = texts.value["cycle-id"] ?? cycles[0].key;
  const hilly = form.job.roads.filter(({ hills }) => hills !== undefined);
  const hillsFrom = texts.value["cycle-hills"] ?? LEVEL;
  const repeat = roadQuantity(form, {
    ...{ id: "cycle-distance", label: "Repeated to a distance of", kind: "distance", usual: "", min: 0.1, max: 2000 },
    mayBeEmpty: true,
  });
  const named = cycles.find(({ key }) => key === cycle)?.words ?? cycle;
  const far = repeat.value === undefined ? "" : `, repeated to ${writeQuantity("distance", repeat.value, units)}`;
  const { field, title } = roadTitleField(
    form,
    "cycle-title",
    `${named}${far}${hillsFrom === LEVEL ? "" : ", with hills"}`,
  );
  const heights = texts.value["cycle-heights"] ?? "";
  const make = async () => {
    const { refused } = form.view.bench;
    let hills: Road["hills"];
    try {
      hills = hillsFrom === TYPED ? readHills(heights) : hilly.find(({ id }) => id === hillsFrom)?.hills;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const words = error.problems.map(({ where, message }) => `${where}: ${message}`).join("; ");
      refused.value = { ...refused.value, [ID]: words };
      return;
    }
    const distance_km = repeat.value;
    const note = `a standard cycle in the place of the client's road${hills ? `; hills ${hillsFrom === TYPED ? "typed" : "of another road"}` : ""}`;
    const request = { cycle, title, ...(distance_km !== undefined && { distance_km }), ...(hills && { hills }) };
    await makeRoad(form, ID, "cycle", { from: "guessed", note }, (room) => room.cycleRoad(request));
  };
  return html`<p>
      A published cycle stands in for the client's road: driven over and over until the day's distance, the last stop included,
      and with the client's hills under it where they are known.
    </p>
    <div class="fields">
      ${viewChoice("cycle-id", "Cycle", cycles, cycle, (key) => put("cycle-id", key))} ${repeat.field}
      ${viewChoice(
        "cycle-hills",
        "Hills",
        [
          { key: LEVEL, words: "level road" },
          { key: TYPED, words: "typed below" },
          ...hilly.map(({ id, title: name }) => ({ key: id, words: `those of ${name}` })),
        ],
        hillsFrom,
        (key) => put("cycle-hills", key),
      )}
      ${field}
    </div>
    ${
      hillsFrom === TYPED
        ? html`<div class="field is-long">
            <label for="cycle-heights">Distances and heights, like “0 km 120 m; 2.5 km 180 m; 4 km 95 m”</label>
            <span class="entry">
              <textarea
                id="cycle-heights"
                rows="3"
                maxlength="5000"
                .value=${live(heights)}
                @input=${(event: Event) => put("cycle-heights", (event.target as HTMLTextAreaElement).value)}
              ></textarea>
            </span>
          </div>`
        : nothing
    }
    <p class="buttons">
      <button type="button" class="main" ?disabled=${repeat.problem !== undefined} @click=${make}>Make a road of it</button>
    </p>
    ${refusal(form, ID)}`;
}
