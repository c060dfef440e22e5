import type { QuantityKind } from "./kinds/kinds.ts";
import { type UnitHabit, writeQuantity } from "./writeQuantity.ts";

// Remarks are written in these units; longer signs first, so that km/h is not read as km, nor mm as m.
const kinds: Readonly<Record<string, QuantityKind>> = {
  "km/h": "speed",
  "Wh/km": "energyUse",
  km: "distance",
  kg: "mass",
  Nm: "torque",
  degC: "temperature",
  mm: "length",
  "m²": "area",
  m: "elevation",
};
const number = "-?\\d+(?:\\.\\d+)?";
const quantity = new RegExp(
  `(?<![\\w.:])(?:(${number}) to )?(${number}) (${Object.keys(kinds).join("|")})(?![\\w/²])`,
  "g",
);

/**
 * A remark in plain words (what a log's cleaning did, why a value is usual) with its quantities in the units that the reader is
 * used to, ranges such as `8 to 12 km/h` too.
 */
export function inReadersUnits(remark: string, units: UnitHabit): string {
  if (units === "metric") return remark.replaceAll(" degC", " °C");
  return remark.replace(quantity, (found, from: string | undefined, to: string, sign: string) => {
    const kind = kinds[sign];
    if (!kind) return found;
    const last = writeQuantity(kind, Number(to), units);
    if (from === undefined) return last;
    const first = writeQuantity(kind, Number(from), units);
    const unit = last.slice(last.indexOf(" "));
    return `${first.endsWith(unit) ? first.slice(0, -unit.length) : first} to ${last}`;
  });
}
