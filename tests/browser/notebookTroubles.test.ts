import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { changedDemo } from "../support/changedDemo.ts";
import { finding, worked, write } from "../support/notebookPage.ts";
import { openWith, openWorking, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const saved = (page: Page) => page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();

describe("when something is amiss", () => {
  it("says so where the browser has no database, and works all the same", async () => {
    const context = await browser.newContext();
    await context.addInitScript(() => Object.defineProperty(window, "indexedDB", { value: undefined }));
    const page = await context.newPage();
    await page.goto(inject("notebookUrl"));
    await openWorking(page, "theCar");
    await worked(page);
    expect(await page.locator(".keeping").textContent()).toContain("Held in this page only");
    await write(page, "vehicle.load_kg", "200");
    await worked(page);
    expect(await finding(page, "theCar")).toContain("With 200 kg");
    await context.close();
  });

  it("shows a failing section's own sentence and lets the others live", async () => {
    const { page } = await openWith(browser, "theRoad", "theJob");
    const job = changedDemo({});
    (job["roads"] as unknown[]).push({ kind: "cycle", id: "moon", title: "The moon", cycle: "uddz" });
    const buffer = Buffer.from(JSON.stringify(job));
    await page.locator("#job-file").setInputFiles({ name: "moon.json", mimeType: "application/json", buffer });
    await page.locator('#view-road option[value="moon"]').waitFor({ state: "attached" });
    await page.selectOption("#view-road", "moon");
    await page.locator("#theRoad .failed").waitFor();
    expect(await page.locator("#theRoad .failed").textContent()).toMatch(/udds/);
    expect(await page.locator("#theRoad .failed pre").count()).toBe(0);
    expect(await page.locator("#answer [data-part=say]").textContent()).toMatch(/No answer\..*udds.*Try again/s);
    expect(await page.locator("#yourRoad .sentence").textContent()).toMatch(/udds.*Try again/s);
    expect(await page.locator("#theRoad .summary").textContent()).toContain("Cannot be calculated");
    expect(await finding(page, "theJob")).toContain("usual day of 38 km");
    await page.selectOption("#view-road", "udds");
    await worked(page);
    expect(await finding(page, "theRoad")).toContain("Every pack keeps up");
    await page.context().close();
  });

  it("shows a job changed in another tab, and lets nobody write over it in silence", async () => {
    const { page: first } = await openWith(browser, "theJob");
    await saved(first);
    const second = await first.context().newPage();
    await second.goto(inject("notebookUrl"));
    await worked(second);
    await write(second, "usualDay_km", "61 km");
    await first.bringToFront();
    await expect.poll(() => first.inputValue("#field-usualDay_km")).toBe("61 km");
    expect(await first.locator(".keeping").textContent()).toContain("Another tab changed this job");
    await first.context().close();
  });

  it("survives being closed in the middle of a word", async () => {
    const { page } = await openWith(browser, "theCar");
    await saved(page);
    await page.locator("#field-vehicle-load_kg").pressSequentially(" and the d");
    const context = page.context();
    await page.close();
    const again = await context.newPage();
    await again.goto(inject("notebookUrl"));
    await worked(again);
    expect(await again.inputValue("#field-vehicle-load_kg")).toContain(" and the d");
    await context.close();
  });

  it("reads a figure by the keyboard, and the others at the same place", async () => {
    const { page } = await openWith(browser, "stateOfCharge", "theRoad");
    await page.locator("#stateOfCharge .figure-slider").nth(1).focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight");
    expect(await page.locator("#stateOfCharge .figure-reading").nth(1).textContent()).toMatch(/\d min: .*kW/);
    expect(await page.locator("#theRoad .figure-reading").first().textContent()).toMatch(/\d min: /);
    await page.context().close();
  });

  it("saves a figure as drawing, picture and numbers", async () => {
    const { page, faults } = await openWith(browser, "energyPerKm");
    const figure = page.locator("#energyPerKm figure").first();
    await figure.locator("summary").first().click();
    const begins: Record<string, string> = { drawing: "<svg", picture: "\u0089PNG", numbers: "\u00ef\u00bb\u00bf" };
    for (const [words, start] of Object.entries(begins)) {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        figure.getByRole("button", { name: `Save as ${words}` }).click(),
      ]);
      const chunks: Buffer[] = [];
      for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
      const bytes = Buffer.concat(chunks);
      expect(bytes.subarray(0, start.length).toString("latin1")).toBe(start);
      expect(bytes.length).toBeGreaterThan(200);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
