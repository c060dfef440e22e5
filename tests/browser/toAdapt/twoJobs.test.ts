import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cycleSpeeds_mps } from "../../support/cycleSpeeds.ts";
import { makeLog, makeTruth } from "../../support/logMaker.ts";
import { writeGpx } from "../../support/logWriter.ts";
import { unfold, worked, write } from "../../support/notebookPage.ts";
import { openNotebook, startChromium } from "../../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const truth = makeTruth(cycleSpeeds_mps("nycc"), 3, () => 50);
const spoiling = { seed: 2, sampling_s: 1, position_m: 3, white_m: 0.5, speed_mps: 0.15, elevation_m: 3 };
const gpx = Buffer.from(writeGpx(makeLog(truth, { ...spoiling, hasMultipath: false, hasDropouts: false })));

/** Everything on the page that a person reads or would print, values of fields included. */
const everything = (page: Page) =>
  page.evaluate(() => {
    const fields = [...document.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>("main input, main textarea")];
    return `${document.title} ${document.body.textContent} ${fields.map(({ value }) => value).join(" ")}`;
  });

const openJob = async (page: Page, title: RegExp) => {
  await page.getByRole("button", { name: title }).first().click();
};

describe("nothing of one client's job is in another's", () => {
  it("on the page, in what is typed but not in the job yet, in undo, and all of it is there again in its own", async () => {
    const { page, faults } = await openNotebook(browser);
    await worked(page);
    await page.setInputFiles("#road-log", { name: "monday.gpx", mimeType: "text/plain", buffer: gpx });
    await page.waitForFunction(() =>
      document.querySelector("#theRoad .road-log")?.textContent?.includes("is driven now"),
    );
    await unfold(page);
    await page.locator("#typed-title").fill("To the secret mill");
    await page.locator("#typed-road").fill("3 km at 48 km/h by the mill");
    await page.locator("#sheet-rated_V").fill("99 V");
    await write(page, "use", "Client Marigold's rounds");
    await page.locator("#field-vehicle-load_kg").selectText();
    await page.keyboard.type("a quarter of Marigold");
    await page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();

    await openJob(page, /invented job: .*pick-up/);
    await page.locator("h1", { hasText: "pick-up" }).waitFor();
    await worked(page);
    await unfold(page);
    const other = await everything(page);
    for (const trace of [
      "monday.gpx",
      "secret mill",
      "48 km/h by the mill",
      "99 V",
      "Marigold",
      "is driven now",
      "Client's own",
    ])
      expect(other.includes(trace), trace).toBe(false);
    await page.keyboard.press("Control+z");
    expect(await page.locator("h1").textContent()).toContain("pick-up");

    await openJob(page, /^Open .*Piano tuner|^Open Piano/);
    await page.locator("h1", { hasText: "Piano tuner" }).waitFor();
    await worked(page);
    await unfold(page);
    expect(await page.inputValue("#typed-title")).toBe("To the secret mill");
    expect(await page.inputValue("#typed-road")).toBe("3 km at 48 km/h by the mill");
    expect(await page.inputValue("#sheet-rated_V")).toBe("99 V");
    expect(await page.inputValue("#field-vehicle-load_kg")).toBe("a quarter of Marigold");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("where a copy is made, the copy is what is open, and the original stays as it was", async () => {
    const { page } = await openNotebook(browser);
    await worked(page);
    await page.locator(".jobs > summary").click();
    await page.getByRole("button", { name: /^Copy/ }).first().click();
    await page.locator("h1", { hasText: "(copy)" }).waitFor();
    await write(page, "use", "The copy's own");
    await page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
    await openJob(page, /^Open Piano tuner/);
    await expect.poll(() => page.locator("h1").textContent()).not.toContain("(copy)");
    expect(await everything(page)).not.toContain("The copy's own");
    await page.context().close();
  });
});

describe("a worker that dies", () => {
  it("is started anew: the next change is answered, and no old answer stays", async () => {
    const { page, faults } = await openNotebook(browser);
    await worked(page);
    const before = await page.locator("#energyPerKm .summary .result").textContent();
    for (const worker of page.workers()) await worker.evaluate(() => self.close());
    await write(page, "vehicle.load_kg", "500 kg");
    await worked(page);
    await expect.poll(() => page.locator("#energyPerKm .summary .result").textContent()).not.toBe(before);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
