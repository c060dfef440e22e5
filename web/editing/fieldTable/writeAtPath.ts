import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { knownField } from "./fieldAt.ts";

/** A number of the job for a person, with the unit of its field; bare where the page has no field for it. */
export function writeAtPath(path: string, value: number, units: UnitHabit): string {
  const field = knownField(path);
  return field?.type === "quantity" ? writeQuantity(field.kind, value, units) : formatNumber(value);
}
