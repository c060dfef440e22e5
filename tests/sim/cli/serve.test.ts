import { spawnSync } from "node:child_process";
import { createServer } from "node:http";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { listen } from "../../../sim/cli/serving/listen.ts";

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

it("says by what a taken port is changed, and that another port shows other saved jobs, and does not wander", async () => {
  const other = createServer();
  onTestFinished(() => void other.close());
  const port = await listen(other, 0);
  for (const { status, stdout, stderr } of [start(["--port", String(port)]), start([], String(port))]) {
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(stderr.split("\n")).toHaveLength(2);
    expect(stderr).toContain(`port ${port} is taken`);
    expect(stderr).toContain("BELLHOUSING_PORT");
    expect(stderr).toContain("a browser keeps saved jobs per address");
  }
});
