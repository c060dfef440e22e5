/** An option as a command declares it. */
export interface CommandOption {
  /** `boolean` is there or not; `string` is followed by a value. */
  readonly type: "boolean" | "string";
  /** What stands for the value in the usage, `FILE.csv`; options of type `string` only. */
  readonly value?: string;
  /** One line for `--help`. */
  readonly help: string;
}

/** A command line after its options were checked against those that the command declares. */
export interface CommandArguments {
  readonly positionals: readonly string[];
  /** By option name without its dashes; an option that was not given is not in it. */
  readonly values: Readonly<Record<string, string | boolean>>;
}

/** Takes one text (without its closing line end) to standard output or to standard error. */
export type Print = (text: string) => void;

/**
 * A command: data, and a function that prints through what it is given, so that a test needs no process. Results go to
 * `print`, progress and warnings to `warn`. It returns nothing, or 1 where a check that was asked for failed;
 * wrong input is thrown as InputError and ends in exit code 2.
 */
export interface Command {
  readonly name: string;
  /** What follows the name: `JOB [--json]`. */
  readonly usage: string;
  /** What it is for, in one line. */
  readonly summary: string;
  readonly options: Readonly<Record<string, CommandOption>>;
  readonly run: (args: CommandArguments, print: Print, warn: Print) => ExitCode | Promise<ExitCode>;
}

// biome-ignore lint/suspicious/noConfusingVoidType: a command that just ends has nothing to return
type ExitCode = 1 | void;
