import { describe, expect, it } from "vitest";
import about from "../../../package.json" with { type: "json" };
import { inputError } from "../../../shared/problems.ts";
import type { Command } from "../../../sim/cli/command.ts";
import { runCommandLine } from "../../../sim/cli/commandLine.ts";
import { commands } from "../../../sim/cli/commands.ts";
import { runCommand } from "../../support/runCommand.ts";

const tried: Command = {
  name: "tried",
  usage: "HOW",
  summary: "ends in the way it is asked to",
  options: {},
  run({ positionals }, print) {
    if (positionals[0] === "input") throw inputError("bad", "a.csv line 2", "found nothing");
    if (positionals[0] === "fault") throw new Error("7 is not 8");
    print("done");
    return positionals[0] === "check" ? 1 : undefined;
  },
};

async function run(...words: readonly string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommandLine(
    [tried],
    words,
    (text) => out.push(text),
    (text) => err.push(text),
  );
  return { code, out: out.join("\n"), err: err.join("\n") };
}

describe("exit codes", () => {
  it("is 0 for what is done", async () => {
    expect(await run("tried", "well")).toEqual({ code: 0, out: "done", err: "" });
  });

  it("is 1 for a check that failed", async () => {
    expect((await run("tried", "check")).code).toBe(1);
  });

  it("is 2 for wrong input, said with its place on standard error", async () => {
    expect(await run("tried", "input")).toEqual({ code: 2, out: "", err: "a.csv line 2: found nothing" });
  });

  it("is 3 for a fault of ours, in one sentence", async () => {
    expect(await run("tried", "fault")).toEqual({
      code: 3,
      out: "",
      err: "a fault of this program, not of your input: 7 is not 8 (--debug shows where)",
    });
  });

  it.each([[["tried", "fault", "--debug"]], [["--debug", "tried", "fault"]]])(
    "shows the place in the program for %j",
    async (words) => {
      const { code, err } = await run(...words);
      expect(code).toBe(3);
      expect(err).toContain("commandLine.test.ts");
    },
  );
});

describe("a slip of the hand", () => {
  it.each([
    [["cylces"], "cylces: found no command of this name; did you mean cycles"],
    [["constructor"], "constructor: found no command of this name; known are"],
    [["--jsno"], "--jsno: found an option before any command"],
    [["cycles", "--jsn"], "--jsn: found no option of this name; did you mean --json"],
    [["help", "tarce"], "tarce: found no command of this name; did you mean trace"],
  ])("%j is answered with what would be right and ends in 2", async (words, message) => {
    const { code, out, err } = await runCommand(...words);
    expect(err).toContain(message);
    expect({ code, out }).toEqual({ code: 2, out: "" });
  });

  it("gets the list of commands for no command at all", async () => {
    const { code, out, err } = await runCommand();
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain("bellhousing trace");
  });
});

describe("help", () => {
  it.each([[["--help"]], [["-h"]], [["help"]]])("%j names every command on standard output", async (words) => {
    const { code, out, err } = await runCommand(...words);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    for (const { name, summary } of commands) {
      expect(out).toContain(`bellhousing ${name} `);
      expect(out).toContain(summary);
    }
  });

  it.each(commands.map(({ name }) => name))("tells every option of %s, and runs nothing", async (name) => {
    const { code, out } = await runCommand(name, "--help");
    expect(code).toBe(0);
    for (const option of Object.keys(commands.find((one) => one.name === name)?.options ?? {}))
      expect(out).toContain(`--${option}`);
    expect((await runCommand("help", name)).out).toBe(out);
    expect((await runCommand(name, "-h")).out).toBe(out);
  });

  it("prints the version of the package", async () => {
    expect(await runCommand("--version")).toEqual({ code: 0, out: about.version, err: "" });
  });
});
