import { html } from "lit-html";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { draftsBelow } from "../fields/draftsBelow.ts";
import { moduleForm, modulePicker } from "../forms/pack/moduleForm.ts";
import { packsForm } from "../forms/pack/packsForm.ts";
import { findingsOf } from "./parts/findingsOf.ts";
import { layoutInWords, packLayout } from "./parts/packLayout.ts";
import { defineSection } from "./parts/section.ts";

const firstFields = ["module.name", "module.condition", "module.capacity_Ah", "module.mass_kg"];

/** Which packs are on the table, and do their voltages fit? */
export default defineSection({
  name: "packs",
  title: "Packs",
  question: "Which packs are on the table, and do they fit the controller and the charger?",
  given: (form) => html`
    ${form.fields(...firstFields)}
    ${modulePicker(form)}
    ${form.fold("More about the module", moduleForm(form), ...draftsBelow(form, "module", firstFields))}
    ${packsForm(form)}
  `,
  fields: ["packs", "module"],
  explains: ["usable_kWh"],
  inputs: ["job", "runs", "units"],
  compute: ({ job, runs, units }) => {
    const volts = (value_V: number) => writeQuantity("voltage", value_V, units);
    const { min_V, max_V } = job.controller;
    return {
      warnings: findingsOf(
        runs.candidates,
        ["packAboveController", "packBelowController", "packAboveCharger", "controllerCutsFirst", "shedAccessories"],
        units,
      ),
      layoutMeans: layoutInWords(runs.candidates[0].pack),
      window: `${volts(min_V)} to ${volts(max_V)}`,
      packs: runs.candidates.map(({ name, pack }) => ({
        name,
        layout: packLayout(pack),
        nominal: writeQuantity("energy", pack.nominal_kWh, units),
        usable: writeQuantity("energy", pack.usable_kWh, units),
        mass: writeQuantity("mass", pack.mass_kg, units),
        voltages: `${volts(pack.min_V)} · ${volts(pack.nominal_V)} · ${volts(pack.max_V)}`,
        full_V: pack.max_V,
        usable_kWh: pack.usable_kWh,
      })),
    };
  },
  plot: ({ packs, window, layoutMeans }) => [
    {
      caption: "The candidate packs",
      columns: [
        { title: "Pack" },
        { title: "Modules" },
        { title: "On the label" },
        { title: "Usable" },
        { title: "With boxes" },
        { title: "Volts empty · middle · full" },
      ],
      rows: packs.map((pack) => [pack.name, pack.layout, pack.nominal, pack.usable, pack.mass, pack.voltages]),
      note: `The controller works from ${window}. ${layoutMeans}`,
    },
  ],
  sentence: ({ packs }) => {
    const [least, most] = [
      packs.toSorted((a, b) => a.usable_kWh - b.usable_kWh)[0],
      packs.toSorted((a, b) => b.usable_kWh - a.usable_kWh)[0],
    ];
    if (packs.length === 1)
      return `One pack is on the table, with ${least.usable} usable (${least.name}, ${least.layout}).`;
    return `${packs.length} packs are on the table, from ${least.usable} usable (${least.name}, ${least.layout}) to ${most.usable} (${most.name}, ${most.layout}).`;
  },
  summary: ({ packs, window }) => {
    const bySize = packs.toSorted((a, b) => a.usable_kWh - b.usable_kWh);
    const usable = packs.length === 1 ? "" : ` to ${bySize.at(-1)?.usable}`;
    return `${packs.length === 1 ? "1 pack" : `${packs.length} compared`}, ${bySize[0].usable}${usable} usable; controller ${window}`;
  },
  attention: ({ warnings }) => warnings,
  caution:
    "Direct voltage above about 60 V kills. Every pack here is to be treated so, whatever it shows on the meter: who may work on it, and how, the local rules say. Gloves, one hand, disconnect open, wait, prove it dead. A damaged or unknown module stays outdoors.",
});
