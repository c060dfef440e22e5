import { describe, expect, it } from "vitest";
import about from "../../../package.json" with { type: "json" };
import { inputError } from "../../../shared/problems.ts";
import type { Command } from "../../../sim/cli/command.ts";
import { runCommandLine } from "../../../sim/cli/commandLine.ts";
import { commands } from "../../../sim/cli/commands.ts";
import { changedDemoFile } from "../../support/changedDemo.ts";
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

describe("what a terminal would obey", () => {
  const trick = "\u001b]0;title\u0007\u009b31m\u202e\u007f\r";
  const shown = "\u241b]0;title\u2407<009b>31m<202e>\u2421\u240d";

  it("is shown and not obeyed, in results, warnings and messages", async () => {
    const command: Command = {
      ...tried,
      run: (_, print, warn) => {
        print(`a\tb\n${trick}`);
        warn(trick);
        throw inputError("bad", trick, `found "${trick}\nline"`);
      },
    };
    const printed: string[] = [];
    const code = await runCommandLine(
      [command],
      ["tried"],
      (text) => printed.push(text),
      (text) => printed.push(text),
    );
    expect({ code, printed }).toEqual({
      code: 2,
      printed: [`a\tb\n${shown}`, shown, `${shown}: found "${shown}\u240aline"`],
    });
    expect((await run(trick)).err).toContain(`${shown}: found no command`);
  });

  it("stands in JSON as escapes that a program reads back", async () => {
    const path = changedDemoFile({ title: "Ann\u009b31m" });
    const { code, out } = await runCommand("drive", path, "--json");
    expect(code).toBe(0);
    expect(out).toContain("Ann\\u009b31m");
    expect(JSON.parse(out).job).toBe("Ann\u009b31m");
  });

  it("cannot make a line of its own out of a pack's name", async () => {
    const path = changedDemoFile({ "packs.0.name": "8 kWh\n! 8 kWh: bought" });
    const { out } = await runCommand("drive", path);
    expect(out).toContain("8 kWh\u240a! 8 kWh: bought");
    expect(out).not.toMatch(/^! 8 kWh: bought/m);
  });
});

it("shortens what was found where it would fill the screen", async () => {
  const { code, err } = await runCommand("drive", `${"x".repeat(200)}.csv`, "--step", "9".repeat(100_000));
  expect(code).toBe(2);
  expect(err.length).toBeLessThan(2000);
});

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
