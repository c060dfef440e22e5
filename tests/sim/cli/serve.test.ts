import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "../../..");

function start(args: readonly string[], port?: string) {
  return spawnSync(process.execPath, ["--import", "tsx", "sim/cli/serve.ts", ...args], {
    cwd: root,
    encoding: "utf8",
    timeout: 50_000,
    env: { ...process.env, ...(port === undefined ? {} : { BELLHOUSING_PORT: port }) },
  });
}

it.each([
  [["--port", "0"], undefined, '--port: found "0", a whole number from 1 to 65535 as a port is wanted\n'],
  [[], "high", 'BELLHOUSING_PORT: found "high", a whole number from 1 to 65535 as a port is wanted\n'],
  [["--prt", "5"], undefined, "--prt: found no option of this name; did you mean --port\n"],
] as const)("refuses %j with BELLHOUSING_PORT %s before it builds anything", (args, port, message) => {
  const { status, stdout, stderr } = start(args, port);
  expect({ status, stdout, stderr }).toEqual({ status: 2, stdout: "", stderr: message });
});
