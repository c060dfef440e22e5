import { plainNumber } from "../../../shared/plainNumber.ts";
import { unitNamed } from "../log/columnUnits.ts";

export type DecimalSign = "." | ",";

const unitBehind = /^([+-]?[\d.,]+(?:e[+-]?\d{1,3})?)\s*([^\s\d.,][^\d.,]{0,20})$/i;
/** Longer than any number of a log: what is longer is none. */
const LONGEST_CELL = 60;

/**
 * The number written in a cell, or NaN for "no value": an empty cell, a word, or a number too large to be one. A unit behind it
 * (`13.4 m/s`) is left to `unitInCell`. With a decimal comma, a point is taken as a decimal sign too where no comma stands beside it.
 */
export function readNumber(text: string, decimal: DecimalSign): number {
  let plain = splitCell(text).number.replace(/^\u2212/, "-"); // a minus as printers have it
  if (decimal === "," && plain.includes(",")) {
    plain = plain.replace(",", ".");
  }
  return plainNumber(plain);
}

/** The unit written behind a cell's number, by our name of it, or "". Capital N, S, E and W are sides of the globe. */
export function unitInCell(text: string): string {
  return splitCell(text).unit;
}

function splitCell(text: string): { readonly number: string; readonly unit: string } {
  const number = text.length > LONGEST_CELL ? "" : text.trim();
  const found = /[^\d.]$/.test(number) ? unitBehind.exec(number) : null;
  const unit = found && !/^[NSEW]$/.test(found[2]) ? unitNamed(found[2]) : "";
  return found && unit !== "" ? { number: found[1], unit } : { number, unit: "" };
}
