import { formatNumber } from "./formatNumber.ts";
import type { QuantityKind } from "./kinds/kinds.ts";
import { inUnits, type UnitHabit, writeQuantity } from "./writeQuantity.ts";

/** A quantity inside a sentence, in the job file's unit for its kind. */
export interface MessageQuantity {
  readonly kind: QuantityKind;
  readonly value: number;
  /** Significant figures at most; three where not given. */
  readonly digits?: number;
  /** Rounded to a whole number of the reader's unit, this way. */
  readonly whole?: "down" | "up" | "nearest";
  /** Without its unit, where another number in the sentence has it. */
  readonly isBare?: boolean;
}

/** A sentence whose quantities are still numbers, so that it can be said in the units of whoever reads it. */
export type Message = readonly (string | MessageQuantity)[];

/** A quantity for `message`. */
export function quantity(kind: QuantityKind, value: number, digits?: number): MessageQuantity {
  return digits === undefined ? { kind, value } : { kind, value, digits };
}

/** A quantity for `message` in whole units, rounded down where not asked otherwise. */
export function whole(kind: QuantityKind, value: number, how: "down" | "up" | "nearest" = "down"): MessageQuantity {
  return { kind, value, whole: how };
}

/** The same quantity without its unit. */
export function bare(part: MessageQuantity): MessageQuantity {
  return { ...part, isBare: true };
}

/** The sentence of a template; bare numbers have no unit and are rounded to three figures at once. */
export function message(
  words: TemplateStringsArray,
  ...parts: readonly (string | number | MessageQuantity | Message)[]
): Message {
  const pieces: (string | MessageQuantity)[] = [];
  words.forEach((text, i) => {
    pieces.push(text);
    const part = parts[i];
    if (part === undefined) return;
    if (typeof part === "number") pieces.push(formatNumber(part));
    else if (typeof part === "string" || !isSaid(part)) pieces.push(part);
    else pieces.push(...part);
  });
  return pieces;
}

function isSaid(part: MessageQuantity | Message): part is Message {
  return Array.isArray(part);
}

/** The sentence in the units that the reader is used to. */
export function messageIn(sentence: Message, units: UnitHabit): string {
  return sentence.map((part) => (typeof part === "string" ? part : written(part, units))).join("");
}

function written({ kind, value, digits, whole, isBare }: MessageQuantity, units: UnitHabit): string {
  if (whole === undefined) return writeQuantity(kind, value, units, digits);
  const { number, unit } = inUnits(kind, value, units);
  if (!Number.isFinite(number)) return "-";
  const count = wholeNumber(number, whole);
  return isBare ? `${count}` : `${count} ${count === 1 ? unit.replace(/^miles$/, "mile") : unit}`;
}

/** A number made whole, up, down, or to the nearest; one that is whole but for rounding errors stays. Never -0. */
export function wholeNumber(number: number, how: "down" | "up" | "nearest"): number {
  const nearest = Math.round(number);
  if (how === "nearest" || Math.abs(number - nearest) < 1e-9 * Math.max(1, Math.abs(number))) return nearest + 0;
  return (how === "down" ? Math.floor(number) : Math.ceil(number)) + 0;
}
