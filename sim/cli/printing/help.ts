import { commonOptions } from "../arguments/parseArguments.ts";
import type { Command } from "../command.ts";
import { textTable } from "./table.ts";

const ours = "bellhousing";

/** All commands with a line each. */
export function commandList(commands: readonly Command[]): string {
  return [
    "How much battery is enough for a classic road vehicle turned electric, by simulation.",
    "",
    `usage: ${ours} COMMAND ...   (${ours} COMMAND --help says more)`,
    "",
    ...commands.map(({ name, usage, summary }) => `  ${ours} ${name} ${usage}\n      ${summary}`),
    "",
    "exit codes: 0 done, 1 a check that was asked for failed, 2 wrong input, 3 a fault of this program",
  ].join("\n");
}

/** How one command is used, with its options. */
export function commandUsage({ name, usage, summary, options }: Command): string {
  const rows = Object.entries({ ...options, ...commonOptions }).map(([option, { value, help }]) => [
    `  --${option}${value ? ` ${value}` : ""}`,
    help,
  ]);
  const table = textTable([{ heading: "options" }, { heading: "" }], rows);
  return [`usage: ${ours} ${name} ${usage}`, "", summary, "", table].join("\n");
}
