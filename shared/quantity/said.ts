import { formatNumber } from "./formatNumber.ts";
import type { QuantityKind } from "./kinds.ts";
import { type UnitHabit, writeQuantity } from "./writeQuantity.ts";

/** A quantity inside a sentence, in the job file's unit for its kind. */
export interface SaidQuantity {
  readonly kind: QuantityKind;
  readonly value: number;
  /** Significant figures at most; three where not given. */
  readonly digits?: number;
}

/** A sentence whose quantities are still numbers, so that it can be said in the units of whoever reads it. */
export type Said = readonly (string | SaidQuantity)[];

/** A quantity for `say`. */
export function quantity(kind: QuantityKind, value: number, digits?: number): SaidQuantity {
  return digits === undefined ? { kind, value } : { kind, value, digits };
}

/** The sentence of a template; bare numbers have no unit and are rounded to three figures at once. */
export function say(words: TemplateStringsArray, ...parts: readonly (string | number | SaidQuantity | Said)[]): Said {
  const said: (string | SaidQuantity)[] = [];
  words.forEach((text, i) => {
    said.push(text);
    const part = parts[i];
    if (part === undefined) return;
    if (typeof part === "number") said.push(formatNumber(part));
    else if (typeof part === "string" || !isSaid(part)) said.push(part);
    else said.push(...part);
  });
  return said;
}

function isSaid(part: SaidQuantity | Said): part is Said {
  return Array.isArray(part);
}

/** The sentence in the units that the reader is used to. */
export function saidIn(said: Said, units: UnitHabit): string {
  return said
    .map((part) => (typeof part === "string" ? part : writeQuantity(part.kind, part.value, units, part.digits)))
    .join("");
}
