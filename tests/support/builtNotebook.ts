import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import type { TestProject } from "vitest/node";
import { listen } from "../../sim/cli/listen.ts";
import { staticServer } from "../../sim/cli/staticServer.ts";
import { chromiumPath } from "./chromium.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Address of the built notebook, with a closing slash. */
    notebookUrl: string;
    chromiumPath: string;
  }
}

/** Builds the notebook as `npm start` does, into a folder of its own, and serves it by the same server on a free port. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  project.provide("chromiumPath", await chromiumPath());
  const folder = mkdtempSync(join(tmpdir(), "bellhousing-web-"));
  const nodeEnvBefore = process.env["NODE_ENV"];
  process.env["NODE_ENV"] = "production"; // the runner says "test", and packages would then bundle their development build
  await build({ mode: "production", logLevel: "warn", build: { outDir: folder, emptyOutDir: true } });
  if (nodeEnvBefore !== undefined) process.env["NODE_ENV"] = nodeEnvBefore;
  const server = staticServer(folder);
  const port = await listen(server, 0);
  project.provide("notebookUrl", `http://127.0.0.1:${port}/`);
  return async () => {
    await new Promise((resolve) => {
      server.close(resolve);
      server.closeAllConnections();
    });
    rmSync(folder, { recursive: true, force: true });
  };
}
