import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectNoSidewaysScroll, worked } from "../support/notebookPage.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

describe("first visit", () => {
  it("goes from the example through ten questions, unknowns allowed, to a first answer with a band", async () => {
    const { page, faults } = await openNotebook(browser, 390, 844);
    await worked(page);
    expect(await page.locator(".welcome").textContent()).toContain("This is a worked example");
    await page.getByRole("button", { name: "Start with your own car" }).click();
    await page.waitForFunction(() => document.querySelector("h1")?.textContent === "A car of your own");
    expect(await page.locator(".first-questions ol > li").count()).toBe(10);
    const answers: Record<string, string> = {
      "vehicle-name": "Two-door, 1964",
      use: "shop, station, once a month to my sister",
      usualDay_km: "19 miles",
      longestDay_km: "unknown",
      "vehicle-arriving_kg": "15 1/2 cwt",
      "vehicle-load_kg": "unknown",
      "vehicle-tyres-loadedRadius_mm": "5.20-13",
      "driveline-finalDrive_ratio": "9/38",
    };
    for (const [path, text] of Object.entries(answers)) {
      await page.locator(`#first-field-${path}`).fill(text);
      await page.locator(`#first-field-${path}`).blur();
    }
    await page.selectOption("#first-shape", "open-two-seater");
    await page.selectOption("#first-road", "mixed");
    await worked(page);
    const said = (await page.locator(".first-questions .jobs-body").textContent())?.replace(/\s+/g, " ");
    expect(said).toMatch(/is enough|None of these packs is enough/);
    expect(said).toMatch(/values still open it may well be anything from \d.* to \d/);
    expect(await page.inputValue("#field-vehicle-roadLoad-drag_coeff")).toBe("0.58");
    expect(await page.locator("#field-vehicle-load_kg-from").inputValue()).toBe("usual");
    await expectNoSidewaysScroll(page);
    expect(faults).toEqual([]);

    await page.reload();
    await worked(page);
    expect(await page.inputValue("#field-vehicle-arriving_kg")).toBe("15 1/2 cwt");
    await page.context().close();
  });
});
