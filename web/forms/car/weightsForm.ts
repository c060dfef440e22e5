import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import type { Weights } from "../../../shared/job/schema/weights.ts";
import { weighedAxles } from "../../../shared/job/weighedAxles.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { kindChoice } from "../../fields/kindChoice.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup, usualOf } from "../../fields/optionalGroup.ts";

const PATH = "weights";

/** Where the masses of the car sit: as weighed, what comes out and goes in, people, the pack's boxes, plates. */
export function weightsForm(form: Form): TemplateResult {
  return optionalGroup(
    form,
    {
      path: PATH,
      name: "axle loads",
      without: "Only the whole car is weighed here: what rests on each axle is not known.",
      start: startingWeights,
    },
    () => {
      const { weights } = form.job;
      return weights ? content(form, weights) : html``;
    },
  );
}

function content(form: Form, weights: Weights): TemplateResult {
  const isByCorner = "frontLeft_kg" in weights.weighed;
  const keys = isByCorner ? ["frontLeft_kg", "frontRight_kg", "rearLeft_kg", "rearRight_kg"] : ["front_kg", "rear_kg"];
  return html`
    ${form.fields(`${PATH}.wheelbase_mm`)}
    ${kindChoice(
      form,
      `${PATH}.weighed`,
      "Weighed as it arrived, nobody aboard",
      [
        { key: "axles", words: "by axle", make: () => ({ ...weighedAxles(weights) }) },
        { key: "corners", words: "by wheel", make: () => ({ ...cornersOf(weights) }) },
      ],
      isByCorner ? "corners" : "axles",
    )}
    ${form.fields(...keys.map((key) => `${PATH}.weighed.${key}`))}
    ${form.fields(...["front_kg", "rear_kg", "gross_kg", "frontTyres_kg", "rearTyres_kg"].map((key) => `${PATH}.plates.${key}`))}
    ${itemsTable(form, weights, "in", "What goes in, without the pack.", "What")}
    ${itemsTable(form, weights, "out", "What comes out.", "What")}
    ${boxesTable(form, weights)}
    ${roomFold(form, weights)}
    ${itemsTable(form, weights, "load", "Aboard beside the driver, fully laden.", "Who or what")}
    ${optionalGroup(
      form,
      {
        path: `${PATH}.driver`,
        name: "driver",
        without: "Nobody drives: the car is weighed empty and laden.",
        start: () => ({ name: "driver", mass_kg: 75, place_mm: Math.round(0.55 * weights.wheelbase_mm) }),
      },
      () => form.fields(`${PATH}.driver.name`, `${PATH}.driver.mass_kg`, `${PATH}.driver.place_mm`),
    )}
    ${optionalGroup(
      form,
      {
        path: `${PATH}.ball`,
        name: "ball load",
        without: "Nothing is towed.",
        start: () => ({ mass_kg: 50, place_mm: weights.wheelbase_mm + 900 }),
      },
      () => form.fields(`${PATH}.ball.mass_kg`, `${PATH}.ball.place_mm`),
    )}
  `;
}

function itemsTable(form: Form, weights: Weights, list: "in" | "out" | "load", caption: string, head: string) {
  const path = `${PATH}.${list}`;
  const items = weights[list];
  const more = { name: "something more", mass_kg: 10, place_mm: 0 };
  return listTable(form, {
    path,
    caption,
    entry: list === "load" ? "load" : "part",
    rowName: (i) => items[i].name,
    columns: [
      { key: "name", head },
      { key: "mass_kg", head: "Mass" },
      { key: "place_mm", head: "Behind the front axle" },
    ],
    most: list === "load" ? 40 : 60,
    add: (state) => withEntry(state, path, state.job.weights?.[list].length ?? 0, more),
    remove: (state, i) => withoutEntry(state, path, i),
  });
}

function boxesTable(form: Form, { boxes }: Weights): TemplateResult {
  const path = `${PATH}.boxes`;
  return listTable(form, {
    path,
    caption: "Boxes of the pack; their shares sum to 100 %.",
    entry: "box",
    rowName: (i) => boxes[i].name,
    columns: [
      { key: "name", head: "Box" },
      { key: "place_mm", head: "Behind the front axle" },
      { key: "share_frac", head: "Share of the pack" },
    ],
    most: 12,
    least: 1,
    // A new box holds nothing yet, so that the shares still sum to all of the pack.
    add: (state) => {
      const now = state.job.weights?.boxes ?? [];
      return withEntry(state, path, now.length, { name: `box ${now.length + 1}`, place_mm: 0, share_frac: 0 });
    },
    remove: (state, i) => withoutEntry(state, path, i),
  });
}

/** What room the boxes have inside, for how many modules go in. */
function roomFold(form: Form, { boxes }: Weights): TemplateResult {
  const sides = [
    ["length_mm", "along the car"],
    ["width_mm", "across"],
    ["height_mm", "height"],
  ] as const;
  const fields = boxes.flatMap(({ name }, i) =>
    sides.map(([key, words]) => ({ path: `${PATH}.boxes.${i}.${key}`, label: `${name}, inside: ${words}` })),
  );
  return html`${form.fold(
    "Room in the boxes: how many modules go in",
    form.fields(...fields.map(({ path, label }) => form.field(path, label)), `${PATH}.clearance_mm`),
    ...fields.map(({ path }) => path),
    `${PATH}.clearance_mm`,
  )}`;
}

/** The same axles with each side carrying half. */
function cornersOf(weights: Weights) {
  const { front_kg, rear_kg } = weighedAxles(weights);
  const [front, rear] = [front_kg / 2, rear_kg / 2];
  return { frontLeft_kg: front, frontRight_kg: front, rearLeft_kg: rear, rearRight_kg: rear };
}

/** A car to start from, by its mass and balance as far as the job has them: common practice, no source; to be typed over. */
export function startingWeights({ vehicle }: Job): Weights {
  const { kerb_kg, balance, removed_kg, added_kg, load_kg, gross_kg } = vehicle;
  const wheelbase_mm = balance?.wheelbase_mm ?? usualOf(`${PATH}.wheelbase_mm`);
  const front_kg = Math.round(kerb_kg * (balance?.frontShare_frac ?? 0.52));
  const driver_kg = Math.min(75, load_kg);
  return {
    wheelbase_mm,
    weighed: { front_kg, rear_kg: Math.round(kerb_kg) - front_kg },
    out: removed_kg > 0 ? [{ name: "engine and what goes with it", mass_kg: removed_kg, place_mm: 100 }] : [],
    in: added_kg > 0 ? [{ name: "motor and what goes with it", mass_kg: added_kg, place_mm: 200 }] : [],
    ...(driver_kg > 0 && {
      driver: { name: "driver", mass_kg: driver_kg, place_mm: Math.round(0.55 * wheelbase_mm) },
    }),
    load:
      load_kg > driver_kg
        ? [{ name: "the rest of the load", mass_kg: load_kg - driver_kg, place_mm: Math.round(0.85 * wheelbase_mm) }]
        : [],
    boxes: [
      { name: "front box", place_mm: 0, share_frac: 0.5 },
      { name: "rear box", place_mm: wheelbase_mm, share_frac: 0.5 },
    ],
    plates: gross_kg === undefined ? {} : { gross_kg },
  };
}
