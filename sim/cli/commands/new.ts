import { type Demo, demos } from "../../../shared/demos/index.ts";
import { jobText } from "../../../shared/job/jobText.ts";
import { nearest } from "../../../shared/nearest.ts";
import { inputError } from "../../../shared/problems.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import type { Command, CommandArguments } from "../command.ts";
import { writeText } from "../files/files.ts";
import { textTable } from "../printing/table.ts";

export const newJob: Command = {
  name: "new",
  usage: "FILE [--from DEMO] | --list",
  summary: "write a job file to start from, never over one",
  options: {
    from: { type: "string", value: "DEMO", help: `the demo to copy; else ${demos[0].id}` },
    list: { type: "boolean", help: "the demos, and nothing is written" },
  },
  run(args, print, warn) {
    if (hasOption(args, "list")) {
      if (textOption(args, "from") !== undefined)
        throw inputError("option-beside", "--from", "found it beside --list, which writes nothing");
      if (args.positionals.length > 0)
        throw inputError("argument-extra", args.positionals[0], "found a file beside --list, which writes none");
      print(
        textTable(
          [{ heading: "demo" }, { heading: "an invented job" }],
          demos.map(({ id, title }) => [id, title]),
        ),
      );
      return;
    }
    const path = filePath(args);
    const demo = demoNamed(textOption(args, "from"));
    writeText(path, jobText(demo.document), "keep");
    warn(`written: ${path}, the demo ${demo.id}; next: bellhousing drive ${path}`);
  },
};

function filePath({ positionals }: CommandArguments): string {
  const [path, extra] = positionals;
  if (path === undefined)
    throw inputError("argument-missing", "new", "found no file name, one is wanted: new my.bellhousing.json");
  if (extra !== undefined)
    throw inputError("argument-extra", extra, "found a second argument, new takes one file name");
  return path;
}

function demoNamed(id: string | undefined): Demo {
  const demo = id === undefined ? demos[0] : demos.find((one) => one.id === id);
  if (demo) return demo;
  const ids = demos.map((one) => one.id);
  const near = nearest(String(id), ids);
  const hint = near ? `did you mean ${near}` : `the demos are ${ids.join(", ")}`;
  throw inputError("demo-unknown", String(id), `found no demo of this name; ${hint}`);
}
