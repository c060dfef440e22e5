import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Engine } from "./engine.ts";
import { marionetteDriver } from "./marionetteDriver.ts";
import { ownPrograms } from "./ownPrograms.ts";

/** Starts this Firefox without a window, in a profile of its own. */
export async function startFirefox(path: string): Promise<Engine> {
  const own = ownPrograms();
  try {
    const profile = join(own.folder, "profile");
    const downloads = join(own.folder, "downloads");
    mkdirSync(join(profile, "chrome"), { recursive: true });
    mkdirSync(downloads);
    const preferences = {
      "marionette.port": 0, // any free one; it writes down which
      "browser.download.folderList": 2,
      "browser.download.dir": downloads,
      "browser.download.alwaysOpenPanel": false, // it would take the keyboard
      "toolkit.legacyUserProfileCustomizations.stylesheets": true,
    };
    const lines = Object.entries(preferences).map(
      ([name, value]) => `user_pref("${name}", ${JSON.stringify(value)});\n`,
    );
    writeFileSync(join(profile, "user.js"), lines.join(""));
    // Its own window would not be narrower than 450 px, and a telephone is.
    writeFileSync(join(profile, "chrome/userChrome.css"), ":root { min-width: 0 !important; }");
    own.start(path, ["--headless", "--marionette", "--no-remote", "--profile", profile]);
    const port = await own.patiently(
      "Firefox's port",
      () => Number(readFileSync(join(profile, "MarionetteActivePort"), "utf8")) || undefined,
    );
    const driver = await marionetteDriver(port);
    return { driver, downloads, close: own.close };
  } catch (error) {
    await own.close();
    throw error;
  }
}
