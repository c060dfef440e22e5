import { atPath } from "../../../shared/job/path.ts";
import type { Part } from "../../../shared/parts/part.ts";
import type { PartOrigin } from "../../../shared/parts/partOrigin.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import { knownField } from "../../editing/fieldTable/fieldAt.ts";
import { writeField } from "../../editing/fieldTable/writeAtPath.ts";
import { originInWords } from "../../fields/originText.ts";

/** One figure of a part as people read it. */
export interface PartRow {
  readonly what: string;
  readonly value: string;
  readonly band: string;
  readonly origin: string;
}

/** The figures that a part would bring to the group at `path`, each with its band and where it comes from. */
export function partRows(part: Part<unknown>, path: string, units: UnitHabit): PartRow[] {
  return Object.entries(part.origins).flatMap(([key, origin]) => {
    const value = atPath(part.data, key);
    const where = `${path}.${key}`;
    const what = labelFor(where);
    if (what === undefined) return [];
    return [
      {
        what,
        value: valueWords(where, value, units),
        band: bandWords(where, origin, units),
        origin: originInWords(origin),
      },
    ];
  });
}

// Axes of a curve go without a row of their own: they are counted with the curve.
function labelFor(where: string): string | undefined {
  const field = knownField(where) ?? knownField(`${where}.0`);
  if (field) return field.label;
  return where.endsWith(".envelope") ? "Peak torque over speed" : undefined;
}

function valueWords(where: string, value: unknown, units: UnitHabit): string {
  if (typeof value === "number") return writeField(where, value, units);
  const list = Array.isArray(value) ? value : atPath(value, "torque_Nm");
  return Array.isArray(list) ? `${list.length} values` : "";
}

function bandWords(where: string, { low, high, plusMinus_frac }: PartOrigin, units: UnitHabit): string {
  if (plusMinus_frac !== undefined) return `± ${Math.round(100 * plusMinus_frac)} %`;
  if (low === undefined || high === undefined) return "as described";
  const [from, to] = [writeField(where, low, units), writeField(where, high, units)];
  const unit = /\s\D.*$/.exec(to)?.[0] ?? "";
  return `${unit !== "" && from.endsWith(unit) ? from.slice(0, -unit.length) : from} to ${to}`;
}
