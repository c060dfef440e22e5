import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demos } from "../../../../shared/demos/index.ts";
import { readJob, readJobText } from "../../../../shared/job/readJob.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";
import { runCommand } from "../../../support/runCommand.ts";

it("writes the first demo, which drive then takes", async () => {
  const path = join(emptyFolder(), "my.bellhousing.json");
  const { code, out, err } = await runCommand("new", path);
  expect({ code, out }).toEqual({ code: 0, out: "" });
  expect(err).toBe(`written: ${path}, the demo piano-tuner; next: bellhousing drive ${path}`);
  expect(readJobText(readFileSync(path, "utf8"), path)).toEqual(readJob(demos[0]?.document));
  expect((await runCommand("drive", path)).code).toBe(0);
});

it.each(demos.map(({ id }) => id))("writes %s where that is asked for", async (id) => {
  const path = join(emptyFolder(), "my.json");
  expect((await runCommand("new", path, "--from", id)).code).toBe(0);
  expect(JSON.parse(readFileSync(path, "utf8"))).toEqual(demos.find((demo) => demo.id === id)?.document);
});

it("never writes over a file", async () => {
  const path = join(emptyFolder(), "my.json");
  writeFileSync(path, "a year of work");
  expect(await runCommand("new", path)).toEqual({
    code: 2,
    out: "",
    err: `${path}: found a file of this name already; it is left as it is; choose another name`,
  });
  expect(readFileSync(path, "utf8")).toBe("a year of work");
});

it("lists the demos", async () => {
  const { code, out, err } = await runCommand("new", "--list");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  for (const { id, title } of demos) expect(out).toMatch(new RegExp(`^${id} +${title}$`, "m"));
});

describe("bad input ends in 2", () => {
  it.each([
    [["new"], "new: found no file name, one is wanted: new my.bellhousing.json"],
    [["new", "a.json", "b.json"], "b.json: found a second argument, new takes one file name"],
    [["new", "--list", "a.json"], "a.json: found a file beside --list, which writes none"],
    [["new", "--list", "--from", "bakery-van"], "--from: found it beside --list, which writes nothing"],
    [["new", "a.json", "--from", "bakery"], "bakery: found no demo of this name; did you mean bakery-van"],
    [["new", "a.json", "--from", "steam"], "steam: found no demo of this name; the demos are piano-tuner, bakery-van"],
    [["new", "none/of/it/a.json"], "none/of/it/a.json: found no folder none/of/it to write into"],
    [["new", "tests"], "tests: found a folder, a file is wanted"],
  ])("%j", async (words, message) => {
    const { code, out, err } = await runCommand(...words);
    expect(err).toContain(message);
    expect({ code, out }).toEqual({ code: 2, out: "" });
  });
});
