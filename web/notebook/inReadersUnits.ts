import type { QuantityKind } from "../../shared/quantity/kinds.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";

// The simulation speaks in these units and no others; longer signs first, so that km/h is not read as km.
const kinds: Readonly<Record<string, QuantityKind>> = {
  "km/h": "speed",
  "Wh/km": "energyUse",
  km: "distance",
  kg: "mass",
  Nm: "torque",
  degC: "temperature",
};
const quantity = /(-?\d+(?:\.\d+)?) (km\/h|Wh\/km|km|kg|Nm|degC)(?![\w/])/g;

/** A sentence of the simulation with its quantities in the units that the reader is used to. */
export function inReadersUnits(sentence: string, units: UnitHabit): string {
  if (units === "metric") return sentence;
  return sentence.replace(quantity, (found, number: string, sign: string) => {
    const kind = kinds[sign];
    return kind ? writeQuantity(kind, Number(number), units) : found;
  });
}
