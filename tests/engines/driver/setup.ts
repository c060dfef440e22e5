import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { buildAndServe } from "../../support/builtNotebook.ts";
import { type EngineName, enginesThatStart } from "./findEngines.ts";

declare module "vitest" {
  export interface ProvidedContext {
    engines: readonly EngineName[];
  }
}

/**
 * The built notebook, served as `npm start` serves it, for the engines that start here. Their drivers do not report what goes wrong on
 * a page, so the page begins with a script that keeps it.
 */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const found = await enginesThatStart();
  if (found.length === 0) throw new Error("neither Firefox nor WebKit starts here");
  const { url, folder, close } = await buildAndServe();
  const page = join(folder, "index.html");
  copyFileSync(join(import.meta.dirname, "keepFaults.js"), join(folder, "keepFaults.js"));
  writeFileSync(page, readFileSync(page, "utf8").replace(/<head>/, '<head><script src="./keepFaults.js"></script>'));
  project.provide("engines", found);
  project.provide("notebookUrl", url);
  return close;
}
