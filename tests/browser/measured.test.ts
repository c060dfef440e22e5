import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { drivenAndLogged, motionCsv, packCsv, shortDrive } from "../logs/builtCar.ts";
import { axeFinds } from "../support/axeFinds.ts";
import { demoJob } from "../support/demoJob.ts";
import { expectNoSidewaysScroll, worked } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

const change = { rolling_ratio: 1.2, accessories_W: 120, regen_ratio: 0.5 };
const log = drivenAndLogged(demoJob(), 2, shortDrive(), { seed: 5, change, sign: -1, behind_s: 7 }, 1_777_793_000);
const file = (name: string, text: string) => ({ name, mimeType: "text/csv", buffer: Buffer.from(text) });

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const held = (page: Page, words: RegExp) =>
  page.waitForFunction(
    (pattern) =>
      new RegExp(pattern).test(document.querySelector("#promisedAndDriven .summary .result")?.textContent ?? ""),
    words.source,
    { timeout: 60_000 },
  );

it("holds a built car's log against the job, says why it was refused, and fits a telephone", async () => {
  const { page, faults } = await openNotebook(browser, 390, 844, false, true);
  await openWorking(page, "promisedAndDriven");
  await worked(page);
  await held(page, /no log of the built car yet/);
  await page.locator("#measured-pack").selectOption({ label: "17 kWh" });

  await page.setInputFiles("#measured-log", [file("motion.csv", motionCsv(log))]);
  await page.waitForSelector("#promisedAndDriven .heed li");
  expect(await page.locator("#promisedAndDriven .heed li").first().textContent()).toMatch(
    /no volts and no amps of the pack/,
  );

  await page.setInputFiles("#measured-log", [file("motion.csv", motionCsv(log)), file("pack.csv", packCsv(log))]);
  await held(page, /logged \d+\sWh\/km, predicted by the job as it is/);
  await worked(page);
  expect(await page.locator("#promisedAndDriven .sentence").textContent()).toMatch(/what stays on\?/);
  expect(await page.locator("#promisedAndDriven svg[role=img]").count()).toBeGreaterThan(0);
  await expectNoSidewaysScroll(page);
  expect(await axeFinds(page, { within: ["#promisedAndDriven"], least: 5 })).toEqual([]);

  await page.getByRole("button", { name: "Take the corrected values into the job" }).click();
  await page.waitForSelector("#promisedAndDriven .heed li");
  expect(await page.locator("#promisedAndDriven .heed li").first().textContent()).toMatch(
    /holds no frozen prediction yet/,
  );
  expect(faults).toEqual([]);
});
