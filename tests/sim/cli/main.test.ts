import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../support/changedDemo.ts";
import { emptyFolder } from "../../support/emptyFolder.ts";

const root = join(import.meta.dirname, "../../..");

/** The command as a checkout runs it, through a shell, so that pipes can be tried. */
function bellhousing(line: string) {
  return spawnSync("bash", ["-c", `set -o pipefail; "${process.execPath}" --import tsx sim/cli/main.ts ${line}`], {
    cwd: root,
    encoding: "utf8",
    timeout: 50_000,
  });
}

it("ends the process with the code and keeps results and warnings apart", () => {
  const done = bellhousing("cycles --json");
  expect({ status: done.status, stderr: done.stderr }).toEqual({ status: 0, stderr: "" });
  expect(JSON.parse(done.stdout)).toHaveLength(10);
  const refused = bellhousing("cycles --jsn");
  expect({ status: refused.status, stdout: refused.stdout }).toEqual({ status: 2, stdout: "" });
  expect(refused.stderr).toBe("--jsn: found no option of this name; did you mean --json\n");
});

it("ends quietly where its reader stops early", () => {
  const { status, stdout, stderr } = bellhousing("cycles --json | head -c 5");
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: '[{"id', stderr: "" });
});

it("ends in 2 with a sentence where its output has no room", () => {
  for (const line of ["cycles", "drive shared/demos/piano-tuner.bellhousing.json --json"]) {
    const { status, stderr } = bellhousing(`${line} >/dev/full`);
    expect({ status, stderr }).toEqual({ status: 2, stderr: "standard output: found no room left to write into\n" });
  }
});

describe("drive, as a process", () => {
  const tuner = "shared/demos/piano-tuner.bellhousing.json";

  it("prints one object and nothing else, and writes the channels beside it", () => {
    const path = join(emptyFolder(), "channels.csv");
    const { status, stdout, stderr } = bellhousing(`drive ${tuner} --json --channels "${path}"`);
    expect({ status, stderr }).toEqual({ status: 0, stderr: `written: ${path}\n` });
    expect(stdout.endsWith("}\n")).toBe(true);
    expect(JSON.parse(stdout).candidates).toHaveLength(5);
    expect(readFileSync(path, "utf8").startsWith("pack,time_s,")).toBe(true);
  });

  it("ends in 2 for a photograph, with a sentence on standard error", () => {
    const path = join(emptyFolder(), "car.jpg");
    writeFileSync(path, Buffer.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46));
    const { status, stdout, stderr } = bellhousing(`drive "${path}"`);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toBe(`${path}: found bytes that are no text, as in a photograph; a text file in UTF-8 is wanted\n`);
  });

  it("ends in 2 for every fault of a job, a line each", () => {
    const path = changedDemoFile({ "vehicle.kerb_kg": 0, "vehicle.tyres.loadedRadius_mm": 0, "packs.0.mas": 1 });
    const { status, stdout, stderr } = bellhousing(`drive "${path}" --json`);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr.trim().split("\n")).toHaveLength(3);
  });
});
