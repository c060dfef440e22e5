import type { Field } from "./fieldList.ts";
import { chosen, likely, optional, quantity, usual } from "./quantityFieldOf.ts";

const money = (label: string, help?: string): Field => quantity("money", label, { ...chosen, ...(help && { help }) });
/** The higher end of an amount; without it the amount is one figure. */
const most = (label: string): Field => quantity("money", `${label}, at most`, { ...chosen, ...optional });
const year = { ...chosen, help: "Of today's price, from one year to the next: 3 %. Low may be negative." };
const perCells: Field = {
  type: "choice",
  label: "The price is of",
  choices: { module: "each module", kWh: "each kWh when full", pack: "the whole pack" },
};

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of what the conversion costs and of what the car costs to run. */
export const costFields: Readonly<Record<string, Field>> = {
  "costs.work_perh": quantity("money", "An hour of work costs", { ...chosen, ...optional }),
  "costs.work.*.name": { type: "line", label: "What" },
  "costs.work.*.parts.low": money("Parts, at least"),
  "costs.work.*.parts.high": most("Parts"),
  "costs.work.*.hours.low_h": quantity("hours", "Hours, at least", { ...chosen }),
  "costs.work.*.hours.high_h": quantity("hours", "Hours, at most", { ...chosen, ...optional }),
  "costs.cells.per": perCells,
  "costs.cells.price.low": money("Price, at least"),
  "costs.cells.price.high": most("Price"),
  "packs.*.cellPrice.per": perCells,
  "packs.*.cellPrice.price.low": money("Price of its cells, at least"),
  "packs.*.cellPrice.price.high": most("Price of its cells"),
  "costs.contingency_frac": quantity("fraction", "Contingency", {
    ...chosen,
    help: "Rust, seized bolts, a part that does not fit: added to the dearer end.",
    ...usual(0.12, "10 to 15 %"),
  }),
  "costs.vat_frac": quantity("fraction", "VAT on the quote", {
    ...chosen,
    ...optional,
    help: "Left empty: none is added.",
  }),
  "costs.alternatives.*.name": { type: "line", label: "Instead of the conversion" },
  "costs.alternatives.*.price.low": money("Price, at least"),
  "costs.alternatives.*.price.high": most("Price"),
  "costs.alternatives.*.isNeededAnyway": {
    type: "yesNo",
    label: "Needed anyway",
    help: "Without the conversion this has to be paid; the packs are compared with the first such one.",
  },
  "costs.alternatives.*.running.use_l100km": quantity("fuelUse", "Its fuel consumption"),
  "costs.alternatives.*.running.servicing.low": money("Its servicing a year, at least"),
  "costs.alternatives.*.running.servicing.high": most("Its servicing a year"),
  "costs.alternatives.*.running.roadCharge_perday": money("Its road charge for a day"),
  "costs.running.fuel": { type: "choice", label: "Fuel", choices: { petrol: "petrol", diesel: "diesel" } },
  "costs.running.use_l100km": quantity("fuelUse", "Fuel consumption now", {
    help: "From the client's fuel record over several fills. A band, such as 30 to 34 mpg, widens what is worked from it.",
    ...likely(3, 35, "a road vehicle"),
  }),
  "costs.running.price_perl": quantity("fuelPrice", "Price of fuel", { ...chosen, ...optional }),
  "costs.running.now.servicing.low": money("Servicing now a year, at least"),
  "costs.running.now.servicing.high": most("Servicing now a year"),
  "costs.running.now.roadCharge_perday": money(
    "Road charge now for a day",
    "Town charge, toll or tax that an engine pays on a day it is driven.",
  ),
  "costs.running.converted.servicing.low": money("Servicing converted a year, at least"),
  "costs.running.converted.servicing.high": most("Servicing converted a year"),
  "costs.running.converted.roadCharge_perday": money("Road charge converted for a day"),
  "costs.running.insuranceMore": money("More insurance a year", "Once converted; negative where it is less."),
  "costs.running.chargedDays_frac": quantity("fraction", "Days with a road charge", {
    ...chosen,
    help: "Of the days it is driven.",
  }),
  "costs.running.yearly.*.distance_km": quantity("distance", "Distance a year", { ...chosen }),
  "costs.running.years": quantity("count", "Years looked ahead", { ...chosen }),
  "costs.running.discount_frac": quantity("rate", "Discount rate a year", {
    ...chosen,
    ...optional,
    help: "What money earns elsewhere: later savings count that much less. Left empty: they count in full.",
  }),
  "costs.running.fuelDrift.low_frac": quantity("rate", "Fuel price rises, at least", year),
  "costs.running.fuelDrift.high_frac": quantity("rate", "Fuel price rises, at most", { ...year, ...optional }),
  "costs.running.electricityDrift.low_frac": quantity("rate", "Electricity price rises, at least", year),
  "costs.running.electricityDrift.high_frac": quantity("rate", "Electricity price rises, at most", {
    ...year,
    ...optional,
  }),
  "costs.running.grid_gpkWh": quantity("gridCarbon", "CO2 of a kWh from the grid", {
    ...chosen,
    ...optional,
    help: "From your supplier or your country's statistics. Left empty: none is worked out for the converted car.",
  }),
};
