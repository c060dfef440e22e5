import { inputError } from "../../../shared/problems.ts";
import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import type { QuantityOptions } from "../../../shared/quantity/reading/reading.ts";
import { readQuantity } from "../../../shared/quantity.ts";
import type { CommandArguments } from "../command.ts";
import { textOption } from "./optionValue.ts";

/**
 * The quantity written for an option, in the job file's unit for its kind, as a workshop writes it: `--hill "1 in 6"`, `--top "70 mph"`.
 * Nothing where the option was not given. Throws InputError for one that is not understood, is unknown or out of bounds.
 */
export function quantityOption(
  args: CommandArguments,
  name: string,
  kind: QuantityKind,
  options: QuantityOptions = {},
): number | undefined {
  const text = textOption(args, name);
  return text === undefined ? undefined : quantityOf(text, `--${name}`, kind, options);
}

/** The quantity in a text; see `quantityOption`. */
export function quantityOf(text: string, where: string, kind: QuantityKind, options: QuantityOptions = {}): number {
  const reading = readQuantity(kind, text, options);
  if (!reading.ok) throw inputError(reading.problem.code, where, reading.problem.message);
  if (reading.unknown) throw inputError("quantity-unknown", where, `found "${text}", a value is wanted here`);
  if (reading.question) throw inputError("quantity-ambiguous", where, `found "${text}": ${reading.question.text}`);
  return reading.value;
}
