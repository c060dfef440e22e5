import { once } from "node:events";
import { mkdirSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { listen } from "../../../sim/cli/serving/listen.ts";
import type { Engine } from "./engine.ts";
import { httpDriver } from "./httpDriver.ts";
import { ownPrograms } from "./ownPrograms.ts";

/** Starts the small browser that comes with WebKitGTK, by its driver, on a screen that only exists in memory. */
export async function startWebKit(path: string): Promise<Engine> {
  const own = ownPrograms();
  try {
    const screen = own.start("Xvfb", ["-displayfd", "1", "-screen", "0", "1600x1200x24", "-nolisten", "tcp"]);
    let display = "";
    screen.stdout?.on("data", (piece: Buffer) => {
      display += piece.toString();
    });
    await own.patiently("a screen in memory (Xvfb)", () => display.includes("\n") || undefined);
    // Its buttons would hold the window wider than a telephone.
    mkdirSync(join(own.folder, ".config/gtk-3.0"), { recursive: true });
    writeFileSync(
      join(own.folder, ".config/gtk-3.0/gtk.css"),
      "* { min-width: 0; padding: 0; margin: 0; border-width: 0; }",
    );
    const port = await freePort();
    own.start(path, [`--port=${port}`], { DISPLAY: `:${display.trim()}`, HOME: own.folder, GDK_BACKEND: "x11" });
    const url = `http://127.0.0.1:${port}`;
    await own.patiently("WebKit's driver", async () => (await fetch(`${url}/status`)).ok || undefined);
    const driver = await httpDriver(url, {});
    const close = async () => {
      await driver.send("deleteSession", {}).catch(() => {}); // its browser ends with the session
      await own.close();
    };
    return { driver, downloads: own.folder, close }; // what is saved comes to the home folder
  } catch (error) {
    await own.close();
    throw error;
  }
}

async function freePort(): Promise<number> {
  const server = createServer();
  const port = await listen(server, 0);
  server.close();
  await once(server, "close");
  return port;
}
