import { runCommandLine } from "../../sim/cli/commandLine.ts";
import { commands } from "../../sim/cli/commands.ts";

/** What a command line printed and how it ended, without a process. */
export interface CommandRun {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Carries out a command line given as its words: `runCommand("trace", "udds", "--json")`. */
export async function runCommand(...words: readonly string[]): Promise<CommandRun> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommandLine(
    commands,
    words,
    (text) => out.push(text),
    (text) => err.push(text),
  );
  return { code, out: out.join("\n"), err: err.join("\n") };
}
