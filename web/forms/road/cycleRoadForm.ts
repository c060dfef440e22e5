import { html, nothing, type TemplateResult } from "lit-html";
import type { Road } from "../../../shared/job/schema/road.ts";
import { InputError } from "../../../shared/problems.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { standardCycles } from "../../../sim/index.ts";
import { refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { roadQuantity } from "../../fields/roadField.ts";
import { viewChoice } from "../../fields/viewChoice.ts";
import { firstOf, wordsField } from "../../fields/wordsField.ts";
import { roadTitleField } from "./drivingFields.ts";
import { makeRoad } from "./makeRoad.ts";
import { readHills } from "./readHills.ts";

const ID = "cycle-road";
const LEVEL = "level";
const TYPED = "typed";

/** A standard cycle as a road: once or repeated to the day's distance, level or with hills laid under it. */
export function cycleRoadForm(form: Form): TemplateResult {
  const { texts } = form.view.staging.log;
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
    id: "cycle-distance",
    label: "Repeated to a distance of",
    kind: "distance",
    usual: "",
    min: 0.1,
    max: 2000,
    mayBeEmpty: true,
  });
  const named = cycles.find(({ key }) => key === cycle)?.words ?? cycle;
  const far = repeat.value === undefined ? "" : `, repeated to ${writeQuantity("distance", repeat.value, units)}`;
  const titled = roadTitleField(form, "cycle-title", `${named}${far}${hillsFrom === LEVEL ? "" : ", with hills"}`);
  const heights = texts.value["cycle-heights"] ?? "";
  const make = async () => {
    const { refused } = form.view.staging;
    const read = hillsFrom === TYPED ? heightsOf(heights) : hilly.find(({ id }) => id === hillsFrom)?.hills;
    if (typeof read === "string") {
      refused.value = { ...refused.value, [ID]: read };
      return;
    }
    const hills = read;
    const distance_km = repeat.value;
    const note = `a standard cycle in the place of the client's road${hills ? `; hills ${hillsFrom === TYPED ? "typed" : "of another road"}` : ""}`;
    const request = {
      cycle,
      title: titled.title,
      ...(distance_km !== undefined && { distance_km }),
      ...(hills && { hills }),
    };
    await makeRoad(form, ID, "cycle", { from: "guessed", note }, (roads) => roads.cycleRoad(request));
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
      ${titled.field}
    </div>
    ${
      hillsFrom === TYPED
        ? wordsField({
            id: "cycle-heights",
            label: "Distances and heights, like “0 km 120 m; 2.5 km 180 m; 4 km 95 m”",
            text: heights,
            rows: 3,
            write: (text) => put("cycle-heights", text),
            ...heightsInWords(heights, units),
          })
        : nothing
    }
    <p class="buttons">
      <button type="button" class="main" ?disabled=${(repeat.problem ?? titled.problem) !== undefined} @click=${make}>Use this road</button>
    </p>
    ${refusal(form, ID)}`;
}

/** Heights as typed, or why they cannot be read. */
function heightsOf(text: string): NonNullable<Road["hills"]> | string {
  try {
    return readHills(text);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return firstOf(error.problems.map(({ where, message }) => `${where}: ${message}`));
  }
}

/** How typed heights were understood, for below their field; nothing while there are none. */
function heightsInWords(text: string, units: UnitHabit): { problem?: string; understood?: string } {
  if (text.trim() === "") return {};
  const read = heightsOf(text);
  if (typeof read === "string") return { problem: read };
  const { distance_km, elevation_m } = read;
  const far = writeQuantity("distance", distance_km[distance_km.length - 1], units);
  const [low, high] = [Math.min(...elevation_m), Math.max(...elevation_m)];
  const between = `${writeQuantity("elevation", low, units)} to ${writeQuantity("elevation", high, units)}`;
  return { understood: `${distance_km.length} heights over ${far}, from ${between}` };
}
