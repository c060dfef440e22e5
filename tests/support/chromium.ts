import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import packaged from "@sparticuz/chromium";

/** Multi-process and with web security on, unlike the flags the package proposes. */
export const chromiumFlags: readonly string[] = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--font-render-hinting=none",
];

const cache = join(import.meta.dirname, "../../node_modules/.cache");
const home = join(cache, "chromium");

/**
 * Path of a Chromium that starts: CHROME_PATH where it is set, the one that came with `npm ci`, a system's own, in that
 * order. Throws one sentence where there is none, since a browser test that does not run shows nothing.
 */
export async function chromiumPath(): Promise<string> {
  const chosen = process.env["CHROME_PATH"];
  if (chosen) {
    if (starts(chosen)) return chosen;
    throw new Error(`CHROME_PATH is ${chosen}, which does not start as a Chromium`);
  }
  const unpacked = await unpackedChromium();
  if (unpacked) return unpacked;
  for (const path of ["/usr/bin/chromium", "/usr/bin/chromium-browser"]) if (starts(path)) return path;
  throw new Error(
    "no Chromium starts here, so the browser tests cannot run: run `npm ci` again, or install the system's chromium, " +
      "or set CHROME_PATH to one",
  );
}

/** A run killed half-way leaves a torn binary behind, so what is found is tried, and unpacked anew if it fails. */
async function unpackedChromium(): Promise<string | undefined> {
  const path = join(home, "chromium");
  if (starts(path)) return path;
  mkdirSync(cache, { recursive: true });
  // Unpacked beside its place and moved there whole: two runs at once can then not see each other's half.
  const draft = mkdtempSync(join(cache, "chromium-"));
  const tmpdirBefore = process.env["TMPDIR"];
  try {
    process.env["TMPDIR"] = draft; // the package unpacks into the system's temporary folder
    await packaged.executablePath();
    if (!starts(join(draft, "chromium"))) return undefined;
    if (starts(path)) return path;
    rmSync(home, { recursive: true, force: true });
    renameSync(draft, home);
    return path;
  } catch {
    return starts(path) ? path : undefined;
  } finally {
    if (tmpdirBefore === undefined) delete process.env["TMPDIR"];
    else process.env["TMPDIR"] = tmpdirBefore;
    rmSync(draft, { recursive: true, force: true });
  }
}

function starts(path: string): boolean {
  if (!existsSync(path)) return false;
  const run = spawnSync(path, ["--version"], { encoding: "utf8", timeout: 20_000 });
  return run.status === 0 && /\d+\.\d+/.test(run.stdout);
}
