import { dirname, join, relative } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";
import { runTool } from "../support/runTool.ts";
import { rooms, root, sourceFiles } from "../support/sourceFiles.ts";

const projects = ["shared", "sim", "sim/cli", "web", "tests"];

// The compiler of version 7 has no interface for programs yet, so that what reads syntax trees has version 6.
it.each(projects)("%s holds to its types", async (project) => {
  const { code, said } = await runTool("node_modules/typescript-7/bin/tsc", ["-p", project, "--pretty", "false"]);
  expect(said).toBe("");
  expect(code).toBe(0);
});

it("leaves no file of the rooms outside a project", () => {
  const checked = new Set<string>();
  for (const project of projects) {
    const path = join(root, project, "tsconfig.json");
    const { config } = ts.readConfigFile(path, ts.sys.readFile);
    const { fileNames } = ts.parseJsonConfigFileContent(config, ts.sys, dirname(path));
    for (const file of fileNames) checked.add(relative(root, file));
  }
  expect(sourceFiles(...rooms).filter((file) => !checked.has(file))).toEqual([]);
});
