import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, inject, it } from "vitest";
import { startChromium } from "../../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

it("loads under 300 kB of script, gzipped, the worker's included", async () => {
  const context = await browser.newContext();
  const scripts = new Map<string, Promise<Buffer>>();
  // Of the context, not of the page: a worker's script is asked for outside the page.
  context.on("response", (response) => {
    if (response.url().endsWith(".js")) scripts.set(response.url(), response.body());
  });
  const page = await context.newPage();
  await page.goto(inject("notebookUrl"), { waitUntil: "networkidle" });
  const bodies = await Promise.all(scripts.values());
  expect(bodies.length).toBeGreaterThan(0);
  const weight_kB = bodies.reduce((sum, body) => sum + gzipSync(body).length, 0) / 1000;
  console.log(`script of the page: ${weight_kB.toFixed(0)} kB gzipped, in ${bodies.length} files`);
  expect(weight_kB).toBeLessThan(300);
});
