import { existsSync } from "node:fs";
import type { Engine } from "./engine.ts";
import { startFirefox } from "./firefox.ts";
import { startWebKit } from "./webKit.ts";

/** The engines beside Chromium's, by name, and where a system's packages put them; FIREFOX_PATH and WEBKIT_DRIVER_PATH go before. */
const engines = {
  Firefox: {
    start: startFirefox,
    paths: [process.env["FIREFOX_PATH"], "/usr/bin/firefox-esr", "/usr/bin/firefox"],
  },
  WebKit: { start: startWebKit, paths: [process.env["WEBKIT_DRIVER_PATH"], "/usr/bin/WebKitWebDriver"] },
};

export type EngineName = keyof typeof engines;

export const engineNames = Object.keys(engines) as readonly EngineName[];

/** Starts the engine of this name; throws a sentence where it is not there or does not start. */
export async function startEngine(name: EngineName): Promise<Engine> {
  const path = engines[name].paths.find((each) => each !== undefined && existsSync(each));
  if (path === undefined) throw new Error("it is not installed");
  return engines[name].start(path);
}

/** The engines that start here. Says of each of the others why it is left out. */
export async function enginesThatStart(): Promise<readonly EngineName[]> {
  const found: EngineName[] = [];
  for (const name of engineNames) {
    try {
      const engine = await startEngine(name);
      await engine.close();
      found.push(name);
    } catch (error) {
      console.error(`${name} is left out: ${error instanceof Error ? error.message : error}`);
    }
  }
  return found;
}
