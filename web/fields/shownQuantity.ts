import { kindInfo, type QuantityKind } from "../../shared/quantity/kinds/kinds.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { isBareNumber } from "./isBareNumber.ts";

export interface ShownQuantity {
  readonly text: string;
  /** The unit that a bare number in this field has. */
  readonly unit: string;
}

/**
 * How a value stands in its field: as it was typed, or else as a number in the reader's units. Six figures, so that
 * nothing measured is rounded away.
 */
export function shownQuantity(
  kind: QuantityKind,
  value: unknown,
  typed: string | undefined,
  units: UnitHabit,
): ShownQuantity {
  const isNumber = typeof value === "number";
  const written = writeQuantity(kind, isNumber ? value : (kindInfo(kind).usual[1] ?? 1), units, 6);
  const [, number = written, unit = ""] = /^(-?[\d.]+(?:e[-+]?\d+)?)\s*(\D.*)?$/.exec(written) ?? [];
  // A bare number was typed in the units of then, so in others it is written anew from its value.
  const isAsTyped = typed !== undefined && (units === "metric" || !isBareNumber(typed));
  // A bare number is no gradient: 12.5 may be a percentage, degrees or "1 in", so it keeps its unit.
  if (kind === "gradient") return { text: isAsTyped ? typed : isNumber ? written : "", unit: "" };
  return { text: isAsTyped ? typed : isNumber ? number : "", unit };
}
