import { parseArgs } from "node:util";
import { nearest } from "../../../shared/nearest.ts";
import { inputError } from "../../../shared/problems.ts";
import type { CommandArguments, CommandOption } from "../command.ts";

/** Options that every command takes. */
export const commonOptions: Readonly<Record<string, CommandOption>> = {
  help: { type: "boolean", help: "how the command is used" },
  debug: { type: "boolean", help: "for a fault of ours, where in the program it happened" },
};

/**
 * What follows a command's name, sorted into options and the rest; after a lone `--` everything is the rest. Throws
 * InputError for an unknown option (with the nearest one), one without its value, with a value it does not take, or twice.
 */
export function parseArguments(
  args: readonly string[],
  declared: Readonly<Record<string, CommandOption>>,
): CommandArguments {
  const options = { ...declared, ...commonOptions };
  const { tokens } = parseArgs({
    args: [...args],
    options: Object.fromEntries(Object.entries(options).map(([name, { type }]) => [name, { type }])),
    strict: false, // its own complaints name no nearest option
    allowPositionals: true,
    tokens: true,
  });
  const positionals: string[] = [];
  const values: Record<string, string | boolean> = {};
  for (const token of tokens) {
    if (token.kind === "positional") positionals.push(token.value);
    if (token.kind !== "option") continue;
    const option = Object.hasOwn(options, token.name) ? options[token.name] : undefined;
    if (!option) throw unknownOption(token.rawName, Object.keys(options));
    if (Object.hasOwn(values, token.name))
      throw inputError("option-twice", token.rawName, "found it twice, once is enough");
    values[token.name] = givenValue(token.rawName, option, token.value, token.inlineValue === true);
  }
  return { positionals, values };
}

function givenValue(
  typed: string,
  option: CommandOption,
  value: string | undefined,
  isInline: boolean,
): string | boolean {
  if (option.type === "boolean") {
    if (value === undefined) return true;
    throw inputError("option-value", typed, `found the value ${value}, it takes none`);
  }
  // `--out --json` is a forgotten value, not a file of that name; a value that begins so can be given by `--out=--json`.
  if (value !== undefined && value !== "" && (isInline || !value.startsWith("--"))) return value;
  throw inputError("option-value", typed, `found no value, ${typed} ${option.value ?? "VALUE"} is wanted`);
}

function unknownOption(typed: string, names: readonly string[]): Error {
  const near = nearest(typed.replace(/^-+/, ""), names);
  const hint = near ? `did you mean --${near}` : `known are ${names.map((name) => `--${name}`).join(", ")}`;
  return inputError("option-unknown", typed, `found no option of this name; ${hint}`);
}
