import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { startChromium } from "../support/openNotebook.ts";
import { bundleStorePage } from "../support/serveStorePage.ts";
import { openTab, storedLoads, typeLoad } from "../support/storeTab.ts";

// A page opened from disk has no host, and browsers give such pages less: the jobs must be kept all the same.

let folder: string;
let url: string;
let browser: Browser;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "bellhousing-page-"));
  const script = (await bundleStorePage()).replaceAll("</script", "<\\/script");
  const file = join(folder, "page.html");
  writeFileSync(
    file,
    `<!doctype html><html lang="en"><meta charset="utf-8"><title>Jobs</title><main></main><script type="module">${script}</script></html>`,
  );
  url = pathToFileURL(file).href;
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

it("a page opened from disk keeps jobs, brings half a word back, and lets no tab overwrite another", async () => {
  const context = await browser.newContext();
  const page = await openTab(context, url);
  await page.getByText("Saved in this browser").waitFor();
  await typeLoad(page, "a quarter of a t");
  await page.reload();
  await page.waitForSelector("body[data-ready]");
  expect(await page.locator("#load").inputValue()).toBe("a quarter of a t");

  const other = await openTab(context, url);
  await typeLoad(page, "175");
  await page.getByText("Saved in this browser").waitFor();
  await typeLoad(other, "300");
  await other.waitForFunction(
    () => document.querySelector(".conflict") !== null || document.querySelector(".news")?.textContent?.includes("tab"),
  );
  await other.getByText("Saved in this browser").waitFor();
  // Either the edit of the first came over before the second began, or both are kept.
  const isAsked = (await other.locator(".conflict").count()) > 0;
  expect(await storedLoads(context, url)).toEqual(isAsked ? [175, 300] : [300]);
  await context.close();
});
