import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

// Everything that the built page is made of; tests and the command line are not in it.
const sources = ["web", "sim", "shared", "cycles", "vite.config.ts", "package-lock.json"];

/** True where the notebook must be built before it is served: never built, or something it is made of is newer. */
export function isBuildDue(root: string): boolean {
  try {
    const built_ms = statSync(join(root, "dist/web/index.html")).mtimeMs;
    return sources.some((source) => newest_ms(join(root, source)) > built_ms);
  } catch {
    return true;
  }
}

function newest_ms(path: string): number {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  // The folder's own time tells of a file taken away.
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newest_ms(join(path, name))), found.mtimeMs);
}
