import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, it } from "vitest";
import { startChromium } from "../support/openNotebook.ts";
import { type ServedPage, serveStorePage } from "../support/serveStorePage.ts";
import { storeContract } from "../support/storeContract.ts";
import "../support/storeTab.ts";

let served: ServedPage;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  [served, browser] = await Promise.all([serveStorePage(), startChromium()]);
  page = await (await browser.newContext()).newPage();
  await page.goto(served.url);
  await page.waitForSelector("body[data-ready]");
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

describe("the store in a browser's database", () => {
  it.each(storeContract.map(({ name }) => name))("%s", async (name) => {
    await page.evaluate((wanted) => window.storePage.runContract(wanted), name);
  });
});
