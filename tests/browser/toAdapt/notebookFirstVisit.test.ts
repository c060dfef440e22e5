import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectNoSidewaysScroll, worked } from "../../support/notebookPage.ts";
import { type OpenNotebook, openNotebook, startChromium } from "../../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

describe("first visit", () => {
  it("goes from the example through the quick start, unknowns allowed, to a first answer with a band", async () => {
    const { page, faults } = await openNotebook(browser, 390, 844);
    await worked(page);
    expect(await page.locator(".answer .verdict").textContent()).toMatch(/^13 kWh: enough\.$/);
    await page.getByRole("button", { name: "New job" }).click();
    await page.waitForFunction(() => document.querySelector("h1")?.textContent === "New job");
    expect(await page.locator(".first-questions ol > li").count()).toBe(12);
    const answers: Record<string, string> = {
      "vehicle-name": "Two-door, 1964",
      use: "shop, station, once a month to my sister",
      usualDay_km: "19 miles",
      longestDay_km: "unknown",
      "vehicle-kerb_kg": "15 1/2 cwt",
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
    expect(said).toMatch(/ kWh: (not enough|only just|enough)\. A usual day of 19 miles ends/);
    expect(said).toMatch(/At ten years, in winter, the 19 miles day ends between \d/);
    expect(await page.inputValue("#field-vehicle-roadLoad-drag_coeff")).toBe("0.58");
    expect(await page.locator("#field-vehicle-load_kg-from").inputValue()).toBe("usual");
    await expectNoSidewaysScroll(page);
    expect(faults).toEqual([]);

    await page.reload();
    await worked(page);
    expect(await page.inputValue("#field-vehicle-kerb_kg")).toBe("15 1/2 cwt");
    await page.context().close();
  });

  it("answers where the client knows nothing: usual values of the car's shape, a band, and what would narrow it", async () => {
    const { page, faults } = await startOwnCar(390);
    await page.selectOption("#first-shape", "pick-up-4x4");
    for (const path of quantities) await answer(page, path, path === "usualDay_km" ? "" : "unknown");
    await worked(page);
    const questions = page.locator(".first-questions");
    expect(await questions.locator("[aria-invalid=true]").count()).toBe(0);
    expect(await page.inputValue("#first-field-vehicle-kerb_kg")).toBe("1500");
    expect(await page.inputValue("#first-field-usualDay_km")).toBe("40");
    expect(await page.inputValue("#first-field-longestDay_km")).toBe("");
    for (const path of quantities) {
      const hint = await page.locator(`#first-field-${path}-hint`).textContent();
      expect(hint).toMatch(
        /Usual: .* write unknown if it is not known|Left empty, packs are judged by the usual day alone/,
      );
      expect(await page.locator(`#first-field-${path}-hint`).isVisible()).toBe(true);
    }
    expect(await saidBelow(page)).toMatch(/anything from [\d.]+ km to [\d.]+ km\..*Measure first: .+, worth [\d.]+ km/);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("keeps nonsense at its question, goes on without it, and lets every answer be put right", async () => {
    const { page, faults } = await startOwnCar(1440);
    await answer(page, "usualDay_km", "12 miles");
    await worked(page);
    const before = await saidBelow(page);
    await answer(page, "vehicle-kerb_kg", "heavy");
    await answer(page, "driveline-finalDrive_ratio", "342");
    await answer(page, "usualDay_km", "there and back");
    await worked(page);
    const says = (path: string) => page.locator(`#first-field-${path}-says`).textContent();
    expect(await says("vehicle-kerb_kg")).toMatch(/found heavy, .*Using 850 kg/s);
    expect(await says("usualDay_km")).toMatch(/found there and back, .*Using 19\.3 km/s);
    expect(await says("driveline-finalDrive_ratio")).toContain("likely 3.42");
    expect(await saidBelow(page)).toBe(before);

    await page.locator(".first-questions .asked button", { hasText: "3.42" }).click();
    await answer(page, "vehicle-kerb_kg", "14 1/4 cwt");
    await page.locator(".first-questions .asked button", { hasText: "112 lb" }).click();
    await answer(page, "usualDay_km", "30 miles");
    await answer(page, "longestDay_km", "20 miles");
    await worked(page);
    expect(await page.locator(".first-questions [aria-invalid=true]").count()).toBe(0);
    expect(await says("vehicle-kerb_kg")).toContain("724 kg");
    expect(await page.locator(".first-questions li .to-mend").textContent()).toContain("changed places");
    expect(await saidBelow(page)).not.toBe(before);
    await answer(page, "longestDay_km", "80 miles");
    expect(await page.locator(".first-questions li .to-mend").count()).toBe(0);
    expect(await page.inputValue("#field-vehicle-kerb_kg")).toContain("14 1/4 cwt");
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

/** The questions that are answered by a quantity. */
const quantities = [
  ...["usualDay_km", "longestDay_km", "vehicle-kerb_kg", "vehicle-load_kg"],
  ...["vehicle-tyres-loadedRadius_mm", "driveline-finalDrive_ratio"],
];

async function startOwnCar(width: number): Promise<OpenNotebook> {
  const notebook = await openNotebook(browser, width, 844);
  const { page } = notebook;
  await worked(page);
  await page.getByRole("button", { name: "New job" }).click();
  await page.waitForFunction(() => document.querySelector("h1")?.textContent === "New job");
  await worked(page);
  return notebook;
}

async function answer(page: Page, path: string, text: string): Promise<void> {
  await page.locator(`#first-field-${path}`).fill(text);
  await page.locator(`#first-field-${path}`).blur();
}

/** The answer and its doubt, below the questions. */
async function saidBelow(page: Page): Promise<string> {
  const said = await page.locator(".first-questions .jobs-body > p:not(.aside)").allTextContents();
  return said.join(" ").replace(/\s+/g, " ");
}
