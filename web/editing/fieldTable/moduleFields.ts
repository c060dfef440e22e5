import type { Field } from "./fieldList.ts";
import { quantity, usual } from "./quantityFieldOf.ts";

const limits =
  "nothing written, and a module without current limits cannot be driven: write its datasheet's figure; its capacity in ampere-hours, taken as amperes, is a careful start";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of a module. */
export const moduleFields: Readonly<Record<string, Field>> = {
  "module.chemistry": {
    type: "choice",
    label: "Cells",
    choices: { nickel: "nickel", ironPhosphate: "iron phosphate" },
  },
  "module.discharge.continuous_A": quantity("current", "Continuous discharge current", { needed: limits }),
  "module.discharge.peak_A": quantity("current", "Peak discharge current", { needed: limits }),
  "module.discharge.peak_s": quantity("duration", "A moment, discharging", { ...usual(10, "5 to 30 s") }),
  "module.charge.continuous_A": quantity("current", "Continuous charge current", { needed: limits }),
  "module.charge.peak_A": quantity("current", "Peak charge current", { needed: limits }),
  "module.charge.peak_s": quantity("duration", "A moment, charging", { ...usual(10, "5 to 30 s") }),
  "module.charging_ratio": quantity("coefficient", "Resistance charging over discharging", {
    ...usual(1.1, "1.0 to 1.4"),
  }),
  "module.resistance.module_mohm.*": quantity("resistance", "Resistance"),
  "module.resistanceByTemperature.resistance_ratio.*": quantity("coefficient", "Times that at 25 °C"),
  "module.openCircuit.cell_V.*": quantity("voltage", "Cell at rest"),
  "module.cellMin_V": quantity("voltage", "Lowest cell voltage", {
    help: "Nickel 2.8 to 3.0 V, iron phosphate 2.5 to 2.8 V.",
  }),
  "module.cellMax_V": quantity("voltage", "Highest cell voltage", { help: "Nickel 4.2 V, iron phosphate 3.6 V." }),
  "module.coldCharge.none_degC": quantity("temperature", "No charging at and below", {
    ...usual(0, "iron phosphate; some nickel cells take a little below"),
  }),
  "module.coldCharge.full_degC": quantity("temperature", "Full charging from", { ...usual(10, "5 to 15 °C") }),
  "module.length_mm": quantity("length", "Length"),
  "module.width_mm": quantity("length", "Width"),
  "module.height_mm": quantity("length", "Height"),
  "module.heat.capacity_kJpK": quantity("heatCapacity", "Heat a module takes up", {
    help: "About 1 kJ/K for each kilogram.",
  }),
  "module.heat.cooling_WpK": quantity("heatLoss", "Heat a module gives off", {
    help: "For each kelvin above the air, in its box among others.",
    ...usual(1.2, "a closed box"),
  }),
  "module.heat.derateFrom_degC": quantity("temperature", "Full current up to", { ...usual(45, "40 to 50 °C") }),
  "module.heat.derateTo_degC": quantity("temperature", "No current from", { ...usual(60, "55 to 65 °C") }),
};
