import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

export const root = join(import.meta.dirname, "../..");
export const rooms = ["shared", "sim", "web", "tests"] as const;

/** Files under a folder of the checkout whose name the pattern fits, as paths from its top, sorted. */
export function filesUnder(folder: string, pattern: RegExp): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((name) => join(folder, name))
    .filter((path) => pattern.test(path))
    .sort();
}

/** The TypeScript files of the given rooms. */
export function sourceFiles(...of: readonly string[]): readonly string[] {
  return of.flatMap((room) => filesUnder(room, /\.ts$/));
}

export function textOf(path: string): string {
  return readFileSync(join(root, path), "utf8");
}
