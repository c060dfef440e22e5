import { expect, it } from "vitest";
import { parseArguments } from "../../../../sim/cli/arguments/parseArguments.ts";
import type { CommandOption } from "../../../../sim/cli/command.ts";

const options: Readonly<Record<string, CommandOption>> = {
  json: { type: "boolean", help: "" },
  out: { type: "string", value: "FILE.csv", help: "" },
  step: { type: "string", value: "S", help: "" },
};

it("sorts options from the rest, wherever they stand", () => {
  expect(parseArguments(["a", "--out", "b.csv", "--json", "c"], options)).toEqual({
    positionals: ["a", "c"],
    values: { out: "b.csv", json: true },
  });
});

it.each([
  [["--out=b.csv"], { out: "b.csv" }],
  [["--out=--json"], { out: "--json" }],
  [["--step", "-1"], { step: "-1" }],
  [["--help"], { help: true }],
  [["--debug"], { debug: true }],
])("reads %j", (args, values) => {
  expect(parseArguments(args, options).values).toEqual(values);
});

it("takes everything behind a lone -- for a name", () => {
  expect(parseArguments(["--", "--json"], options)).toEqual({ positionals: ["--json"], values: {} });
});

it.each([
  [["--jsn"], "--jsn: found no option of this name; did you mean --json"],
  [["--colour"], "--colour: found no option of this name; known are --json, --out, --step, --help, --debug"],
  [["-x"], "-x: found no option of this name"],
  [["--constructor"], "--constructor: found no option of this name"],
  [["--out"], "--out: found no value, --out FILE.csv is wanted"],
  [["--out="], "--out: found no value, --out FILE.csv is wanted"],
  [["--out", "--json"], "--out: found no value, --out FILE.csv is wanted"],
  [["--json=yes"], "--json: found the value yes, it takes none"],
  [["--json", "--json"], "--json: found it twice"],
])("refuses %j and says what would be right", (args, message) => {
  expect(() => parseArguments(args, options)).toThrow(message);
});
