import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** A new folder for one test, taken away after it. */
export function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "bellhousing-test-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
