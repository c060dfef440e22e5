import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { knownField } from "./fieldAt.ts";

/** A value of the job as its field would write it, with its unit and three figures at most. */
export function writeField(path: string, value: unknown, units: UnitHabit): string {
  const field = knownField(path);
  if (typeof value !== "number") return String(value ?? "not known");
  return field?.type === "quantity" ? writeQuantity(field.kind, value, units) : String(value);
}
