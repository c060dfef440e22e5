import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";

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
