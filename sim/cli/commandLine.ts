import about from "../../package.json" with { type: "json" };
import { nearest } from "../../shared/nearest.ts";
import { InputError, inputError, type Problem } from "../../shared/problems.ts";
import { parseArguments } from "./arguments/parseArguments.ts";
import type { Command, Print } from "./command.ts";
import { commandList, commandUsage } from "./printing/help.ts";
import { visible, visibleLine } from "./printing/visible.ts";

/**
 * Carries out one command line and returns its exit code: 0 done, 1 a check that was asked for failed, 2 wrong
 * input or arguments, 3 a fault of ours. Never throws. `args` are what follows the program's name. What jobs, logs and arguments
 * hold goes to a terminal, so nothing is printed that a terminal would obey.
 */
export async function runCommandLine(
  commands: readonly Command[],
  args: readonly string[],
  printRaw: Print,
  warnRaw: Print,
): Promise<number> {
  const print: Print = (text) => printRaw(visible(text));
  const warn: Print = (text) => warnRaw(visible(text));
  try {
    return await carryOut(commands, args, print, warn);
  } catch (error) {
    if (error instanceof InputError) {
      for (const problem of error.problems) warn(problemLine(problem));
      return 2;
    }
    const isDebug = args.includes("--debug");
    const message = error instanceof Error ? error.message : String(error);
    warn(`a fault of this program, not of your input: ${message}${isDebug ? "" : " (--debug shows where)"}`);
    if (isDebug && error instanceof Error && error.stack) warn(error.stack);
    return 3;
  }
}

/** A problem is one line, whatever was found in the input. */
function problemLine({ where, message }: Problem): string {
  return visibleLine(`${shortened(where)}: ${shortened(message)}`);
}

const longest = 600; // letters of a message: enough for any of ours, and a cell of a megabyte does not fill the screen

function shortened(text: string): string {
  if (text.length <= longest) return text;
  return `${text.slice(0, longest / 2)} ... (${text.length - longest} letters left out) ... ${text.slice(-longest / 2)}`;
}

async function carryOut(
  commands: readonly Command[],
  args: readonly string[],
  print: Print,
  warn: Print,
): Promise<number> {
  // `bellhousing --debug drive JOB` is `bellhousing drive JOB --debug`.
  const [name, ...rest] = args[0] === "--debug" ? [...args.slice(1), "--debug"] : args;
  if (name === undefined || name === "--debug") {
    warn(commandList(commands));
    warn("\ncommand: found none, one of those above is wanted");
    return 2;
  }
  if (name === "--help" || name === "-h" || name === "help") {
    print(rest[0] === undefined ? commandList(commands) : commandUsage(find(commands, rest[0])));
    return 0;
  }
  if (name === "--version") {
    print(about.version);
    return 0;
  }
  const command = find(commands, name);
  const parsed = parseArguments(
    rest.map((arg) => (arg === "-h" ? "--help" : arg)),
    command.options,
  );
  if (parsed.values["help"]) {
    print(commandUsage(command));
    return 0;
  }
  return (await command.run(parsed, print, warn)) ?? 0;
}

function find(commands: readonly Command[], name: string): Command {
  const command = commands.find((one) => one.name === name);
  if (command) return command;
  const names = commands.map((one) => one.name);
  const near = nearest(name.replace(/^-+/, ""), names);
  const hint = near ? `did you mean ${near}` : `known are ${names.join(", ")}`;
  throw name.startsWith("-")
    ? inputError("option-unknown", name, `found an option before any command; ${hint}, --help, --version`)
    : inputError("command-unknown", name, `found no command of this name; ${hint}`);
}
