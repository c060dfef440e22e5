import { formatNumber } from "../formatNumber.ts";
import { kindInfo, type QuantityKind } from "../kinds/kinds.ts";
import { applyUnit } from "../kinds/unitRule.ts";
import { tidyUnit } from "../tidyText.ts";
import type { QuantityOptions } from "./reading.ts";

/** A guess at what a number out of bounds should have been: text that reads, and its value in the kind's unit. */
export interface Likely {
  readonly text: string;
  readonly value: number;
}

/**
 * What `number`, out of bounds in the unit it was written with, was likely meant to be; undefined where nothing is
 * likelier than anything else. First the same number in a unit that gets mistaken for this one (35 psi for 35 bar), then
 * the decimal point in another place (3.42 for 342). A guess lies within the field's bounds and where nearly all such quantities lie.
 */
export function likelyMeant(
  kind: QuantityKind,
  number: number,
  written: string,
  options: QuantityOptions,
): Likely | undefined {
  const { slips = [], units } = kindInfo(kind);
  for (const unit of slips) {
    const rule = units[unit];
    if (unit === written || rule === undefined) continue;
    const value = applyUnit(rule, number);
    if (isPlausible(kind, value, options)) return { text: `${formatNumber(number, 12)} ${spell(kind, unit)}`, value };
  }
  const own = written === "" ? 1 : units[written];
  if (own === undefined) return undefined;
  for (const shift of [-1, -2, -3, 1, 2, 3]) {
    const moved = number * 10 ** shift;
    if (kind === "count" && !Number.isInteger(moved)) continue;
    const value = applyUnit(own, moved);
    if (isPlausible(kind, value, options)) {
      return { text: `${formatNumber(moved, 12)}${written === "" ? "" : ` ${spell(kind, written)}`}`, value };
    }
  }
  return undefined;
}

/** Whether a value, in the kind's own unit, is within the field's bounds and usual. */
export function isPlausible(kind: QuantityKind, value: number, options: QuantityOptions): boolean {
  const { usual } = kindInfo(kind);
  return isAllowed(kind, value, options) && value >= usual[0] && value <= usual[1];
}

/** Whether a value, in the kind's own unit, is a number within the field's bounds. */
export function isAllowed(kind: QuantityKind, value: number, options: QuantityOptions): boolean {
  const { min, max } = kindInfo(kind);
  return Number.isFinite(value) && value >= (options.min ?? min) && value <= (options.max ?? max);
}

/** A tidied spelling as people write it. */
function spell(kind: QuantityKind, unit: string): string {
  return kindInfo(kind).spellings.find((spelling) => tidyUnit(spelling) === unit) ?? unit;
}
