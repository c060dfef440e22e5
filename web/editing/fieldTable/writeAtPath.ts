import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { knownField } from "./fieldAt.ts";

/** A number of the job for a person, with the unit of its field; bare where the page has no field for it. */
export function writeAtPath(path: string, value: number, units: UnitHabit): string {
  const field = knownField(path);
  return field?.type === "quantity" ? writeQuantity(field.kind, value, units) : formatNumber(value);
}

/** A value of the job as its field would write it: a number with its unit and three figures at most, a word as it is. */
export function writeField(path: string, value: unknown, units: UnitHabit): string {
  return typeof value === "number" ? writeAtPath(path, value, units) : String(value ?? "not known");
}
