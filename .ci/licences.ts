import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "..");

interface Package {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

/**
 * The licence of this program, and of every package that it may be bundled with: name, version, licence and the text that the
 * package carries. Read from node_modules, so it tells what was bundled; texts alike stand once, below the names they hold for.
 */
export function licences(): string {
  const ofText = new Map<string, string[]>();
  for (const folder of bundledPackages()) {
    const { name, version, license } = readPackage(folder);
    const text = licenceText(folder) ?? `(the package carries no text; its licence is ${license ?? "not stated"})`;
    ofText.set(text, [...(ofText.get(text) ?? []), `${name} ${version}, ${license ?? "see below"}`]);
  }
  const own = readFileSync(join(root, "LICENSE"), "utf8").trim();
  const parts = [...ofText].map(([text, names]) => `${names.join("\n")}\n\n${text}`);
  return `${[`bellhousing\n\n${own}`, ...parts].join(`\n\n${"-".repeat(80)}\n\n`)}\n`;
}

/** Folders of the packages of run time and of all they need, in order of name. */
export function bundledPackages(): readonly string[] {
  const found = new Set<string>();
  const visit = (name: string, from: string) => {
    const folder = folderOf(name, from);
    if (folder === undefined || found.has(folder)) return;
    found.add(folder);
    for (const needed of Object.keys(readPackage(folder).dependencies ?? {})) visit(needed, folder);
  };
  for (const name of Object.keys(readPackage(root).dependencies ?? {})) visit(name, root);
  return [...found].sort();
}

/** Where a package is found from a folder: in its own node_modules, or in those of the folders above. */
function folderOf(name: string, from: string): string | undefined {
  for (let at = from; at.startsWith(root); at = join(at, "..")) {
    const folder = join(at, "node_modules", name);
    try {
      readPackage(folder);
      return folder;
    } catch {
      // not here; further up
    }
  }
  return undefined; // an optional package that is not installed is not bundled either
}

function readPackage(folder: string): Package {
  return JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Package;
}

function licenceText(folder: string): string | undefined {
  const names = readdirSync(folder).filter((name) => /^(licen[cs]e|copying|notice)/i.test(name));
  const texts = names.sort().map((name) => readFileSync(join(folder, name), "utf8").replaceAll("\r\n", "\n").trim());
  return texts.length > 0 ? texts.join("\n\n") : undefined;
}
