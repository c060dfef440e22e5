import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import type { TestProject } from "vitest/node";
import { listen } from "../../sim/cli/serving/listen.ts";
import { staticServer } from "../../sim/cli/serving/staticServer.ts";
import { chromiumPath } from "./chromium.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Address of the built notebook, with a closing slash. */
    notebookUrl: string;
    /** The folder it is served from. */
    notebookFolder: string;
    chromiumPath: string;
    /** Why the one or the other is not there, in one sentence; empty where both are. */
    browserFault: string;
  }
}

/**
 * Builds the notebook as `npm start` does, into a folder of its own, and serves it by the same server on a free port. What
 * goes wrong here is told to the tests, which then fail with that sentence, rather than ending the whole run.
 */
export async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  project.provide("browserFault", "");
  try {
    project.provide("chromiumPath", await chromiumPath());
    const { url, folder, close } = await buildAndServe();
    project.provide("notebookUrl", url);
    project.provide("notebookFolder", folder);
    return close;
  } catch (error) {
    project.provide("browserFault", error instanceof Error ? error.message : String(error));
    return undefined;
  }
}

/** Builds the notebook and serves it by the same server as `npm start`, on a free port. */
export async function buildAndServe(): Promise<{ url: string; folder: string; close: () => Promise<void> }> {
  const folder = mkdtempSync(join(tmpdir(), "bellhousing-web-"));
  const nodeEnvBefore = process.env["NODE_ENV"];
  process.env["NODE_ENV"] = "production"; // the runner says "test", and packages would then bundle their development build
  try {
    await build({ mode: "production", logLevel: "warn", build: { outDir: folder, emptyOutDir: true } });
  } finally {
    if (nodeEnvBefore !== undefined) process.env["NODE_ENV"] = nodeEnvBefore;
  }
  const server = staticServer(folder);
  const port = await listen(server, 0);
  const close = async () => {
    await new Promise((resolve) => {
      server.close(resolve);
      server.closeAllConnections();
    });
    rmSync(folder, { recursive: true, force: true });
  };
  return { url: `http://127.0.0.1:${port}/`, folder, close };
}
