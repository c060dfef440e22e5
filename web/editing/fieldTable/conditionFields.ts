import type { Field } from "./fieldList.ts";
import { chosen, likely, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of a condition's weather, below the path of the condition. */
const weatherFields: Readonly<Record<string, Field>> = {
  temperature_degC: quantity("temperature", "Air temperature", { ...chosen }),
  pack_degC: quantity("temperature", "Cells at the start", {
    ...chosen,
    ...optional,
    help: "Warmer than the air where it stands in a garage. Left empty: as cold as the air.",
  }),
  isDark: { type: "yesNo", label: "Lights, wipers and demister as in winter" },
  drag_ratio: quantity("coefficient", "Drag, times", {
    ...chosen,
    help: "On top of what denser air does, which is counted already.",
    ...usual(1, "nothing on top"),
  }),
  rolling_ratio: quantity("coefficient", "Rolling resistance, times", {
    ...chosen,
    help: "On top of what cold tyres do, which is counted already: a wet road 1.05 to 1.1, snow more.",
    ...usual(1.05, "a wet road"),
  }),
  usable_frac: quantity("fraction", "Usable in the cold", {
    help: "Of the pack's window. That cells sag more in the cold comes from their own table and is not in here.",
    ...usual(0.95, "0.9 to 1 of what is left after the cold cells' own resistance"),
  }),
  resistance_ratio: quantity("coefficient", "Cells' resistance, times", {
    ...chosen,
    help: "On top of the module's own table by temperature.",
    ...usual(1, "the table alone"),
  }),
  wind_kmh: quantity("speed", "Wind", {
    ...chosen,
    help: "Against the car on the way out, with it on the way home. The road is then driven there and back.",
  }),
  "heat.power_kW": quantity("electricPower", "Power of the heater", { ...chosen, ...likely(0.1, 6, "a car's heater") }),
  "heat.cabin_degC": quantity("temperature", "Cabin kept at", { ...chosen, ...usual(18, "in a coat") }),
  "heat.capacity_kJpK": quantity("heatCapacity", "Cabin's heat capacity", {
    help: "Air, trim and glass that have to be warmed.",
    ...usual(45, "30 to 80 kJ/K in a small car"),
  }),
  "heat.loss_WpK": quantity("heatLoss", "Cabin's heat loss", {
    help: "Through glass and tin, and with the air that is let in.",
    ...usual(60, "40 to 90 W/K in a small car"),
  }),
  "heat.isPreheated": { type: "yesNo", label: "Warmed from the socket before it leaves home" },
  "heat.trip_km": quantity("distance", "Length of a trip", {
    ...chosen,
    ...optional,
    help: "After so far it is parked until the cabin is cold. Left empty: one trip on one charge.",
  }),
  "heat.fan_W": quantity("accessoryPower", "Heater's fan and pump", { ...usual(40, "20 to 60 W at 12 V") }),
  "heat.fuel": { type: "choice", label: "It burns", choices: { petrol: "petrol", diesel: "diesel" } },
  "heat.efficiency_frac": quantity("fraction", "Efficiency of the burner", { ...usual(0.8, "0.75 to 0.85") }),
};

/** Fields of the conditions that the packs are driven in, winter's and the workshop's own. */
export const conditionFields: Readonly<Record<string, Field>> = {
  ...below("conditions.winter", weatherFields),
  "conditions.others.*.name": { type: "line", label: "Name of the condition" },
  "conditions.others.*.isOld": { type: "yesNo", label: "With the pack at ten years" },
  ...below("conditions.others.*", weatherFields),
  "conditions.old.resistance_ratio": quantity("coefficient", "Resistance at ten years, times", {
    ...usual(1.3, "1.2 to 1.6 after ten years"),
  }),
};

function below(path: string, fields: Readonly<Record<string, Field>>): Record<string, Field> {
  return Object.fromEntries(Object.entries(fields).map(([key, field]) => [`${path}.${key}`, field]));
}
