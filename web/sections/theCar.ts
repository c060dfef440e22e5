import { html } from "lit-html";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { accessoriesForm } from "../forms/car/accessoriesForm.ts";
import { carForm } from "../forms/car/carForm.ts";
import { findingsOf } from "./parts/findingsOf.ts";
import { layoutInWords, packLayout } from "./parts/packLayout.ts";
import { defineSection } from "./parts/section.ts";

/** What does the car weigh with each pack in it? */
export default defineSection({
  name: "theCar",
  title: "Car",
  question: "What does it weigh as it arrives, and what will it weigh with each pack?",
  given: (form) => html`
    ${form.fields("vehicle.name")}
    ${form.fields("vehicle.kerb_kg", "vehicle.load_kg", "vehicle.removed_kg", "vehicle.added_kg", "vehicle.converted_kg", "vehicle.gross_kg")}
    ${form.fold(
      "Balance, roof, trailer",
      carForm(form),
      ...["balance", "roof", "trailer", "inertia"].map((key) => `vehicle.${key}`),
    )}
    ${form.fold("Lights, heater, 12 V", accessoriesForm(form), "accessories")}
  `,
  fields: [
    ...[
      "name",
      "kerb_kg",
      "load_kg",
      "removed_kg",
      "added_kg",
      "converted_kg",
      "gross_kg",
      "balance",
      "roof",
      "trailer",
      "inertia",
    ].map((key) => `vehicle.${key}`),
    "accessories",
  ],
  explains: ["testMass_kg"],
  inputs: ["job", "runs", "units"],
  compute: ({ job, runs, units }) => {
    const format = (mass_kg: number) => writeQuantity("mass", mass_kg, units);
    const { gross_kg } = job.vehicle;
    const packs = runs.candidates.map(({ name, pack, testMass_kg }) => ({
      name,
      layout: packLayout(pack),
      pack: format(pack.mass_kg),
      driven: format(testMass_kg),
      driven_kg: testMass_kg,
      over: gross_kg !== undefined && testMass_kg > gross_kg ? format(testMass_kg - gross_kg) : undefined,
      spare: gross_kg === undefined ? "plate not known" : format(gross_kg - testMass_kg),
    }));
    return {
      packs,
      layoutMeans: layoutInWords(runs.candidates[0].pack),
      over: findingsOf(runs.candidates, ["aboveGross"], units),
      lightest: packs.toSorted((a, b) => a.driven_kg - b.driven_kg),
      load: format(job.vehicle.load_kg),
    };
  },
  plot: ({ packs, layoutMeans }) => [
    {
      caption: "The car as driven, people and luggage aboard",
      columns: [
        { title: "Pack" },
        { title: "Modules" },
        { title: "Pack with boxes" },
        { title: "Car as driven" },
        { title: "Spare to plated weight" },
      ],
      rows: packs.map(({ name, layout, pack, driven, spare, over }) => [
        name,
        layout,
        pack,
        driven,
        over ? `over by ${over}` : spare,
      ]),
      note: layoutMeans,
    },
  ],
  sentence: ({ lightest, load }) => {
    const [first, last] = [lightest[0], lightest.at(-1)];
    const span = first === last ? "" : ` to ${last?.driven} (${last?.name})`;
    return `With ${load} of people and luggage aboard it weighs ${span && "from "}${first.driven} (${first.name})${span}.`;
  },
  summary: ({ lightest }) => {
    const [first, last] = [lightest[0], lightest.at(-1)];
    return first === last ? `${first.driven} as driven` : `${first.driven} to ${last?.driven} as driven`;
  },
  attention: ({ over }) => over,
  caution:
    "A box of modules weighs as much as a person: lift it with a hoist or with two people, and weigh the car on its wheels again before it is driven. Brakes and springs were made for the old weight.",
});
