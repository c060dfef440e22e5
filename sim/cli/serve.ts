import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { InputError } from "../../shared/problems.ts";
import { numberOption, numberWithin } from "./arguments/optionValue.ts";
import { parseArguments } from "./arguments/parseArguments.ts";
import type { CommandOption } from "./command.ts";
import { isBuildDue } from "./serving/builtPage.ts";
import { listen } from "./serving/listen.ts";
import { staticServer } from "./serving/staticServer.ts";

const usualPort = 4174;
const root = join(import.meta.dirname, "../..");
const options: Readonly<Record<string, CommandOption>> = {
  port: { type: "string", value: "N", help: `another port than ${usualPort}` },
};

/** `npm start`: builds the notebook where that is due and serves it on one fixed address of this machine. */
async function serve(args: readonly string[]): Promise<void> {
  const port = portOf(args);
  const folder = join(root, "dist/web");
  mkdirSync(folder, { recursive: true });
  await listen(staticServer(folder), port); // before the build: a taken port is then told at once
  if (isBuildDue(root)) {
    console.log("building the notebook");
    // Only here: whoever serves what is built already need not load the bundler.
    const { build } = await import("vite");
    const built = (mode: string) =>
      build({ root: join(root, "web"), configFile: join(root, "vite.config.ts"), mode, logLevel: "warn" });
    await built("production");
    await built("oneFile"); // the page in one file, which Share sends with a job inside
  }
  console.log(`the notebook is at http://127.0.0.1:${port}/ (Ctrl+C ends it)`);
  if (port !== usualPort)
    console.log(`a browser keeps saved jobs per address: those saved at port ${usualPort} do not show here`);
}

function portOf(args: readonly string[]): number {
  const bounds = { low: 1, high: 65_535, unit: "as a port", isWhole: true };
  const asked = numberOption(parseArguments(args, options), "port", bounds);
  const set = process.env["BELLHOUSING_PORT"];
  return asked ?? (set ? numberWithin(set, "BELLHOUSING_PORT", bounds) : usualPort);
}

/** One sentence for whoever started it. */
function sentenceFor(error: unknown): string {
  if (error instanceof InputError) return error.message;
  if (error instanceof Error && "code" in error && error.code === "EADDRINUSE" && "port" in error)
    return (
      `port ${error.port} is taken, perhaps by a notebook that is still running; end that one, or choose another with ` +
      "`npm start -- --port N` or BELLHOUSING_PORT=N (a browser keeps saved jobs per address, so another port shows none " +
      "of those saved at this one)"
    );
  return error instanceof Error ? error.message : String(error);
}

try {
  await serve(process.argv.slice(2));
} catch (error) {
  console.error(sentenceFor(error));
  process.exit(error instanceof InputError ? 2 : 1); // a build that failed leaves the server listening
}
