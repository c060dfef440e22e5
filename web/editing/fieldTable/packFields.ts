import type { Field } from "./fieldList.ts";
import { chosen, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the module and the packs: those of a first answer. */
export const packFields: Readonly<Record<string, Field>> = {
  "module.name": { type: "line", label: "Module" },
  "module.origin": { type: "line", label: "Where its figures come from" },
  "module.condition": {
    type: "choice",
    label: "Condition",
    choices: { new: "new", reclaimed: "reclaimed, tested" },
  },
  "module.seriesCells": quantity("count", "Cells in series in a module"),
  "module.parallelCells": quantity("count", "Cells in parallel in a module"),
  "module.capacity_Ah": quantity("charge", "Capacity of a module as tested", {
    help: "Reclaimed modules hold 65 to 90 % of their label: test each one.",
  }),
  "module.tested.*.capacity_Ah": quantity("charge", "Capacity as tested", { ...chosen }),
  "module.mass_kg": quantity("mass", "Mass of a module"),
  "packs.*.name": { type: "line", label: "Name of the pack" },
  "packs.*.isAskedFor": { type: "yesNo", label: "The client asked for this one" },
  "packs.*.seriesModules": quantity("count", "Modules in series", { ...chosen }),
  "packs.*.parallelModules": quantity("count", "Strings in parallel", { ...chosen }),
  "packs.*.whole.energy_kWh": quantity("energy", "Energy of the whole pack", {
    ...chosen,
    help: "Stored when full, all of it.",
  }),
  "packs.*.whole.nominal_V": quantity("voltage", "Nominal voltage", { ...chosen }),
  "packs.*.whole.mass_kgpkWh": quantity("coefficient", "Mass for each kWh, kg", {
    help: "Boxes, bars and lids in it.",
    ...usual(8, "6 to 12 kg for each kWh with its boxes"),
  }),
  "packs.*.ceiling_frac": quantity("fraction", "Charge to", {
    ...chosen,
    ...usual(0.95, "top twentieth left alone"),
  }),
  "packs.*.floor_frac": quantity("fraction", "Discharge to", { ...chosen, ...usual(0.1, "bottom tenth left alone") }),
  "packs.*.regenTo_frac": quantity("fraction", "Regenerate up to", {
    ...chosen,
    ...optional,
    help: "As far as it is charged, where left empty. A charge that stops lower leaves room for a hill at the start.",
  }),
  "packs.*.boxes_frac": quantity("fraction", "Boxes, bars and lids, on the mass of modules", {
    ...usual(0.28, "20 to 35 % on top of the modules"),
  }),
  "packs.*.leads_mohm": quantity("resistance", "Leads, fuses and contactors", { ...usual(5, "common practice") }),
};
