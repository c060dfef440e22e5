import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
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
