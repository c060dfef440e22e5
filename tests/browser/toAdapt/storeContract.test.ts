import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { build } from "vite";
import { afterAll, beforeAll, describe, inject, it } from "vitest";
import type {} from "../../support/contractInBrowser.ts";
import { startChromium } from "../../support/openNotebook.ts";
import { storeContract } from "../../support/storeContract.ts";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await startChromium();
  page = await (await browser.newContext()).newPage();
  await page.goto(`${inject("notebookUrl")}nothing`); // the notebook's own origin, without a notebook that uses its database
  await page.evaluate(await contractScript());
});
afterAll(async () => browser?.close());

/** The contract and the store, in one piece that a page can run. */
async function contractScript(): Promise<string> {
  const entry = join(import.meta.dirname, "../../support/contractInBrowser.ts");
  const built = await build({
    ...{ configFile: false, mode: "production", logLevel: "warn" },
    build: { write: false, target: "es2022", lib: { entry, name: "contract", formats: ["iife"] } },
  });
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((each) => ("output" in each ? each.output : []));
  return outputs.map((file) => (file.type === "chunk" ? file.code : "")).join("\n");
}

describe("the store in a browser's database", () => {
  it.each(storeContract.map(({ name }) => name))("%s", async (name) => {
    await page.evaluate((wanted) => window.runContract(wanted), name);
  });
});
