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
