import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bundledPackages } from "../../.ci/licences.ts";
import about from "../../package.json" with { type: "json" };
import { demos } from "../../shared/demos/index.ts";
import { readJob } from "../../shared/job/readJob.ts";
import { cycleTrace, driveJob } from "../../sim/index.ts";
import { root, textOf } from "../support/sourceFiles.ts";

// What `npm run build && npm pack` gives, made in a folder of its own and laid where an install would put it.

const [study, made] = ["study", "made"].map((name) => mkdtempSync(join(tmpdir(), `bellhousing-${name}-`)));
const installed = join(study, "node_modules/bellhousing");
const run = (folder: string, command: string, ...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd: folder, encoding: "utf8" });
  return { status, stdout, stderr };
};
const example = /```js\n([\s\S]*?)```/.exec(textOf("README.md"))?.[1] ?? "";
const job = demos[0].document;

beforeAll(async () => {
  const mode = process.env["NODE_ENV"];
  process.env["NODE_ENV"] = "production"; // the runner says "test", and packages would then bundle their development build
  for (const [each, folder] of [
    ["oneFile", ""],
    ["command", "cli"],
    ["library", "core"],
  ])
    await build({
      root: each === "oneFile" ? join(root, "web") : root,
      configFile: join(root, "vite.config.ts"),
      mode: each,
      logLevel: "error",
      build: { outDir: join(made, "dist", folder), emptyOutDir: false },
    });
  if (mode !== undefined) process.env["NODE_ENV"] = mode;
  const flags = /tsc (.*) --outDir/.exec(about.scripts.types)?.[1]?.split(" ") ?? [];
  const types = run(
    root,
    process.execPath,
    "node_modules/typescript-7/bin/tsc",
    ...flags,
    "--outDir",
    join(made, "dist/core/types"),
  );
  expect(types).toMatchObject({ status: 0, stdout: "" });
  for (const name of ["package.json", "README.md", "LICENSE", "cycles"])
    cpSync(join(root, name), join(made, name), { recursive: true });
  const packed = run(made, "npm", "pack", "--ignore-scripts", "--silent");
  expect(packed.status).toBe(0);
  mkdirSync(installed, { recursive: true });
  expect(run(installed, "tar", "-xzf", join(made, packed.stdout.trim()), "--strip-components=1").status).toBe(0);
  // The packages that an install would fetch beside it; of these only the types of one are looked at.
  for (const name of ["zod", "@types"])
    symlinkSync(join(root, "node_modules", name), join(study, "node_modules", name));
  writeFileSync(join(study, "tuner.bellhousing.json"), JSON.stringify(job));
}, 240_000);
afterAll(() => {
  for (const folder of [study, made]) rmSync(folder, { recursive: true, force: true });
});

describe("the package", () => {
  it("holds every file that its map and its command name", () => {
    const named = [
      ...Object.values(about.exports).flatMap((entry) => Object.values(typeof entry === "string" ? { entry } : entry)),
      ...Object.values(about.bin),
    ];
    expect(named.filter((path) => !existsSync(join(installed, path.replace("*", "udds.csv"))))).toEqual([]);
  });

  it("runs the README's example: read a job, drive it over a cycle, print Wh/km", () => {
    writeFileSync(join(study, "study.mjs"), example);
    const { status, stdout, stderr } = run(study, process.execPath, "study.mjs");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    const udds = cycleTrace("udds", { udds: textOf("cycles/udds.csv") });
    const lines = driveJob(readJob(job), udds).candidates.map(
      ({ name, battery_Whpkm }) => `${name}: ${battery_Whpkm.toFixed(1)} Wh/km`,
    );
    expect(stdout.trimEnd().split("\n")).toEqual(lines);
    expect(
      example
        .trimEnd()
        .split("\n")
        .filter((line) => line !== "").length,
    ).toBeLessThanOrEqual(10);
  });

  it("has types that a strict script is checked by", () => {
    const wrong =
      "// @ts-expect-error a figure is a number\nexport const figure: string = driveJob(job, udds).candidates[0]?.battery_Whpkm ?? 0;\n";
    writeFileSync(join(study, "study.mts"), `${example}\n${wrong}`);
    const flags = [
      "--noEmit",
      "--strict",
      "--module",
      "nodenext",
      "--target",
      "es2023",
      "--types",
      "node",
      "--skipLibCheck",
    ];
    const { status, stdout } = run(
      study,
      process.execPath,
      join(root, "node_modules/typescript/lib/tsc.js"),
      ...flags,
      "study.mts",
    );
    expect({ status, stdout }).toEqual({ status: 0, stdout: "" });
  });

  it("has a command that runs without any other package", () => {
    const { status, stdout } = run(study, process.execPath, join(installed, about.bin.bellhousing), "--version");
    expect({ status, stdout }).toEqual({ status: 0, stdout: `${about.version}\n` });
  });
});

it("carries the licences of all that is bundled, in each build", () => {
  const texts = ["dist/cli/licences.txt", "dist/core/licences.txt", "dist/bellhousing.html"].map((path) =>
    readFileSync(join(installed, path), "utf8"),
  );
  const packages = bundledPackages().map(
    (folder) => JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as { name: string; version: string },
  );
  expect(packages.length).toBeGreaterThan(Object.keys(about.dependencies).length);
  for (const text of texts) {
    expect(packages.filter(({ name, version }) => !text.includes(`${name} ${version}, `))).toEqual([]);
    expect(text).toContain("SIL OPEN FONT LICENSE");
    expect(text).toContain(textOf("LICENSE").trim());
  }
});
