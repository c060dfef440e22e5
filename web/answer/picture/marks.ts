import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { inUnits } from "../../../shared/quantity/writeQuantity.ts";
import { type Band, type ConditionId, leftCell, type PackAnswer } from "../../../sim/index.ts";

/** One condition of one pack, in the reader's unit. */
export interface Mark {
  readonly condition: ConditionId;
  readonly band: Band;
  /** As in the table: "26 to 38". */
  readonly words: string;
}

/** The three marks of a pack; none of one that may not be used or does not drive. */
export function marksOf({ left, isAtLeast }: Pick<PackAnswer, "left" | "isAtLeast">, units: UnitHabit): Mark[] {
  if (!left) return [];
  return (["new", "winter", "tenYearsWinter"] as const).map((condition) => ({
    condition,
    band: inReaders(left[condition], units),
    words: leftCell(left[condition], units, isAtLeast),
  }));
}

/** A band of kilometres in the reader's unit. */
export function inReaders({ value, low, high }: Band, units: UnitHabit): Band {
  const to = (left_km: number) => inUnits("distance", left_km, units).number;
  return { value: to(value), low: to(low), high: to(high) };
}
