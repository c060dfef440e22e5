import { inputError } from "../../../shared/problems.ts";
import type { CommandArguments } from "../command.ts";
import { textOption } from "./optionValue.ts";

/** One of some words given for an option, or undefined where it was not given. Throws InputError for another word. */
export function choiceOption<Choice extends string>(
  args: CommandArguments,
  name: string,
  choices: readonly Choice[],
): Choice | undefined {
  const text = textOption(args, name);
  if (text === undefined) return undefined;
  const found = choices.find((choice) => choice === text);
  if (found === undefined)
    throw inputError("option-choice", `--${name}`, `found "${text}", one of ${choices.join(", ")} is wanted`);
  return found;
}
