import type { Field } from "./fieldList.ts";
import { chosen, likely, optional, quantity, usual } from "./quantityFieldOf.ts";

const time = "By a clock of 24 hours: 23:30.";
const nextDay = "An end before the beginning is the next morning.";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the charger in the car and of the places where it is charged. */
export const chargingFields: Readonly<Record<string, Field>> = {
  "charger.name": { type: "line", label: "Charger" },
  "charger.efficiency_frac": quantity("fraction", "Efficiency of the charger", {
    ...usual(0.9, "0.85 to 0.94, worse when small"),
    ...likely(0.75, 0.97, "a charger"),
  }),
  "charger.efficiencyByLoad.efficiency_frac.*": quantity("fraction", "Efficiency of the charger"),
  "charger.max_V": quantity("voltage", "Highest voltage of the charger", { ...optional }),
  "charger.min_V": quantity("voltage", "Lowest voltage of the charger", {
    ...optional,
    help: "Below it the charger does not begin: a pack that is emptier stays empty.",
  }),
  "charger.power_kW": quantity("electricPower", "Power of the charger", {
    ...chosen,
    ...optional,
    help: "What it gives to the pack. Left empty, the supply alone sets the pace.",
    ...likely(0.5, 22, "a charger in a car"),
  }),
  "charger.maxDc_A": quantity("current", "Most current into the pack", { ...chosen, ...optional }),
  "charger.maxAc_A": quantity("current", "Most current from each phase", { ...chosen, ...optional }),
  "charger.isThreePhase": {
    type: "yesNo",
    label: "The charger takes three phases",
    help: "A charger of one phase takes a third of a three-phase supply.",
  },
  "charger.tail_A": quantity("current", "Charging ends at a current of", {
    ...chosen,
    ...optional,
    help: "At full voltage. Left empty: a twentieth of the pack's ampere-hours (common practice, no source).",
  }),
  "charger.carDraw_W": quantity("accessoryPower", "The car's own draw while charging", {
    ...optional,
    help: "Contactors, pump, 12 V. Left empty: the always-on load.",
    ...likely(0, 500, "a car that charges"),
  }),
  "supplies.*.name": { type: "line", label: "Place to charge" },
  "supplies.*.kind": {
    type: "choice",
    label: "Kind of supply",
    choices: { household: "household socket", singlePhase: "single phase", threePhase: "three phases" },
  },
  "supplies.*.mode": {
    type: "choice",
    label: "Charging mode",
    choices: { mode1: "mode 1: plain lead", mode2: "mode 2: box in the lead", mode3: "mode 3: wall unit" },
  },
  "supplies.*.voltage_V": quantity("voltage", "Voltage of the supply", {
    ...chosen,
    help: "Of one phase against neutral.",
  }),
  "supplies.*.current_A": quantity("current", "Current of the supply", {
    ...chosen,
    help: "Of each phase, for hours on end.",
  }),
  "supplies.*.hours.from": { type: "line", label: "Parked there from", help: time },
  "supplies.*.hours.to": { type: "line", label: "Parked there until", help: nextDay },
  "supplies.*.price_perkWh": quantity("coefficient", "Price of a kWh", { ...chosen, ...optional }),
  "supplies.*.cheap.from": { type: "line", label: "Cheap from", help: time },
  "supplies.*.cheap.to": { type: "line", label: "Cheap until", help: nextDay },
  "supplies.*.cheap.price_perkWh": quantity("coefficient", "Cheap price of a kWh", { ...chosen, ...optional }),
  currency: { type: "line", label: "Prices are in", isOptional: true },
};
