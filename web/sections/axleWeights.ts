import { html, nothing } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { MM_PER_M } from "../../shared/units.ts";
import {
  axleLoads,
  bayWords,
  type Load,
  overPlate,
  overPlateWords,
  overWords,
  packMass_kg,
  plateNotes,
  splitWords,
  weightNotes,
} from "../../sim/index.ts";
import type { PlacedItem } from "../charts/parts/figure/massStacks.ts";
import { sideView } from "../charts/sideView.ts";
import { weightsForm } from "../forms/car/weightsForm.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { bayTable } from "./parts/bayTable.ts";
import { defineSection, type Table } from "./parts/section.ts";
import type { Values } from "./parts/values.ts";

type Weights = NonNullable<Values["job"]["weights"]>;

/** What rests on each axle, and where may the pack sit? */
export default defineSection({
  name: "axleWeights",
  title: "Axle loads",
  question: "What rests on each axle, before and after, and how much of the pack may sit where?",
  given: (form) =>
    html`${form.job.weights ? form.fields(packChoice(form, "view-pack-axles")) : nothing} ${weightsForm(form)}`,
  fields: ["weights"],
  inputs: ["job", "packIndex", "units"],
  compute: ({ job, packIndex, units }) => {
    const { weights } = job;
    if (weights === undefined) return undefined;
    const loads = axleLoads(job, weights);
    const chosen = job.packs[Math.min(packIndex, job.packs.length - 1)];
    const pack_kg = packMass_kg(chosen, job.module);
    const laden = loads.findLast((load) => load.pack === chosen.name);
    const shown = loads.filter(
      (load) => load.pack === undefined || load.pack === chosen.name || load.name === laden?.name,
    );
    const over = shown.filter((load) => load.pack === chosen.name && load.over.length > 0);
    const first = overPlate(weights, chosen.name, pack_kg);
    const room = bayWords(weights, job, chosen);
    const split = splitWords(chosen.name, pack_kg, weights);
    return {
      pack: chosen.name,
      table: loadTable(shown, weights, units),
      laden,
      view: laden && {
        wheelbase_m: weights.wheelbase_mm / MM_PER_M,
        wheelRadius_m: job.vehicle.tyres.loadedRadius_mm / MM_PER_M,
        items: itemsOf(weights, pack_kg),
        front_kg: laden.front_kg,
        rear_kg: laden.rear_kg,
        gravityPlace_m: laden.gravityPlace_mm / MM_PER_M,
      },
      before: axlesInWords(loads[0], units),
      after: laden && axlesInWords(laden, units),
      overFirst: first && messageIn(overPlateWords(chosen.name, first), units),
      room: room && messageIn(room, units),
      bays: bayTable(job, weights, chosen, units),
      split: split && messageIn(split, units),
      plates: plateNotes(weights).map((note) => messageIn(note, units)),
      over: over.map((load) => `With ${chosen.name}, ${load.name}: ${messageIn(overWords(load.over), units)}.`),
      notes: weightNotes(job, weights).map((note) => messageIn(note, units)),
    };
  },
  plot: (found, drawing) => {
    if (!found) return [];
    const { view, table, bays, pack, laden } = found;
    if (!view || !laden) return [table, ...bays];
    return [
      {
        caption: `Where do the masses sit? The car from the side, ${laden.name}, with ${pack}: heights in proportion to the masses`,
        chart: sideView(view, drawing),
      },
      table,
      ...bays,
    ];
  },
  sentence: (found) => {
    if (!found) return "Only the whole car has been weighed: add the axle loads to see what rests where.";
    const { before, after, pack, laden, split, notes, overFirst, room, plates } = found;
    return [
      ...plates,
      ...(overFirst ? [overFirst] : []),
      `As it arrived ${before}; ${laden?.name ?? ""} with ${pack} ${after ?? ""}.`,
      ...(split ? [split] : []),
      ...(room ? [room] : []),
      ...notes,
    ].join(" ");
  },
  summary: (found) => {
    if (!found) return "not weighed by axle";
    if (found.over.length > 0) return found.over[0].replace(/\.$/, "");
    return `${found.laden?.name ?? ""} with ${found.pack}: ${found.after ?? ""}, within the plates that are known`;
  },
  attention: (found) => (found ? [...found.plates, ...found.over] : []),
  caution:
    "Worked from where each mass was said to sit: weigh every wheel again before the car is driven. Brakes, springs and tyres were chosen for the old loads; a plate is the law's limit, and raising one is for licensed practice.",
});

function axlesInWords({ front_kg, rear_kg }: Load, units: UnitHabit): string {
  return `${writeQuantity("mass", front_kg, units)} front and ${writeQuantity("mass", rear_kg, units)} rear`;
}

function loadTable(loads: readonly Load[], { plates }: Weights, units: UnitHabit): Table {
  const kg = (mass_kg: number) => writeQuantity("mass", mass_kg, units);
  const known = [
    ["front axle", plates.front_kg],
    ["rear axle", plates.rear_kg],
    ["gross", plates.gross_kg],
    ["front tyres", plates.frontTyres_kg],
    ["rear tyres", plates.rearTyres_kg],
  ] as const;
  const limits = known.flatMap(([what, limit_kg]) => (limit_kg === undefined ? [] : [`${what} ${kg(limit_kg)}`]));
  return {
    caption: "Axle loads, before and after",
    columns: [
      { title: "The car" },
      { title: "Front axle" },
      { title: "Rear axle" },
      { title: "Together" },
      { title: "In front" },
      { title: "Over a limit", isText: true },
    ],
    rows: loads.map((load) => [
      load.pack === undefined ? load.name : `${load.name}, ${load.pack}`,
      kg(load.front_kg),
      kg(load.rear_kg),
      kg(load.total_kg),
      writeQuantity("fraction", load.frontShare_frac, units, 2),
      load.over.length === 0 ? "no" : messageIn(overWords(load.over), units),
    ]),
    note:
      limits.length === 0
        ? "No plate and no tyre load is known: nothing is checked."
        : `Limits: ${limits.join(", ")}. All of them apply.`,
  };
}

function itemsOf(weights: Weights, pack_kg: number): PlacedItem[] {
  const placed = (
    kind: PlacedItem["kind"],
    list: readonly { readonly name: string; readonly mass_kg: number; readonly place_mm: number }[],
  ) => list.map(({ name, mass_kg, place_mm }) => ({ name, mass_kg, place_m: place_mm / MM_PER_M, kind }));
  const boxes = weights.boxes
    .filter(({ share_frac }) => share_frac > 0)
    .map(({ name, place_mm, share_frac }) => ({ name, place_mm, mass_kg: share_frac * pack_kg }));
  const aboard = [...(weights.driver ? [weights.driver] : []), ...weights.load];
  const ball = weights.ball ? [{ name: "ball load", ...weights.ball }] : [];
  return [
    ...placed("out", weights.out),
    ...placed("in", weights.in),
    ...placed("box", boxes),
    ...placed("load", [...aboard, ...ball]),
  ];
}
