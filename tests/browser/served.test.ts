import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, inject, it } from "vitest";
import { openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

it("loads the built notebook without an error and without asking any other host", async () => {
  const { page, faults } = await openNotebook(browser);
  await page.waitForLoadState("networkidle");
  expect(await page.title()).toContain("Bellhousing");
  expect(faults).toEqual([]);
});

it("is served under a policy without inline script and without code made from strings", async () => {
  const response = await fetch(inject("notebookUrl"));
  const policy = response.headers.get("content-security-policy") ?? "";
  expect(policy).toContain("default-src 'self'");
  expect(/script-src[^;]*'unsafe-(inline|eval)'/.test(policy)).toBe(false);
  expect(/<script(?![^>]*\bsrc=)[^>]*>/.test(await response.text())).toBe(false);
});

it("has no part that imports the worker's first file, which WebKit would then run a second time", () => {
  const assets = join(inject("notebookFolder"), "assets");
  const scripts = readdirSync(assets).filter((file) => file.endsWith(".js"));
  const worker = scripts.find((file) => file.startsWith("worker-")) ?? "no worker";
  const importing = scripts.filter((file) => readFileSync(join(assets, file), "utf8").includes(`from"./${worker}"`));
  expect(scripts).toContain(worker);
  expect(scripts.filter((file) => readFileSync(join(assets, file), "utf8").includes(worker))).toHaveLength(1); // the page starts it
  expect(importing).toEqual([]);
});
