import { plainNumber } from "../../../shared/plainNumber.ts";
import { inputError } from "../../../shared/problems.ts";
import type { CommandArguments } from "../command.ts";

/** The text given for an option, or undefined where it was not given. */
export function textOption({ values }: CommandArguments, name: string): string | undefined {
  const value = values[name];
  return typeof value === "string" ? value : undefined;
}

/** True where an option of type `boolean` was given. */
export function hasOption({ values }: CommandArguments, name: string): boolean {
  return values[name] === true;
}

/** What a number on the command line must lie within, both ends allowed; `unit` is for the message. */
interface NumberBounds {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly isWhole?: boolean;
}

/** The number given for an option, or undefined where it was not given. Throws InputError for one that is not allowed. */
export function numberOption(args: CommandArguments, name: string, bounds: NumberBounds): number | undefined {
  const text = textOption(args, name);
  return text === undefined ? undefined : numberWithin(text, `--${name}`, bounds);
}

/** A plain number from text, which may repeat the unit wanted: `0.5 s`. Throws InputError for what is none or lies outside the bounds. */
export function numberWithin(text: string, where: string, { low, high, unit, isWhole = false }: NumberBounds): number {
  const number = plainNumber(text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text);
  if (number >= low && number <= high && (!isWhole || Number.isInteger(number))) return number;
  const kind = isWhole ? "a whole number" : "a number";
  throw inputError("option-number", where, `found "${text}", ${kind} from ${low} to ${high} ${unit} is wanted`);
}
