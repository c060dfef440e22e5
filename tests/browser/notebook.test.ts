import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { answered, finding, saidAt, worked, write } from "../support/notebookPage.ts";
import { openNotebook, openWith, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const load = "vehicle.load_kg";

describe("notebook", () => {
  it("opens on the demo with every section worked and the answer at its head", async () => {
    const { page, faults } = await openNotebook(browser);
    await worked(page);
    expect(await page.locator("h1").textContent()).toContain("Piano tuner");
    expect(await page.locator(".answer .verdict").textContent()).toBe("13 kWh: enough.");
    expect(await page.locator("main section").count()).toBeGreaterThanOrEqual(10);
    expect(await page.locator("figure svg[role=img]").count()).toBeGreaterThanOrEqual(5);
    const captions = await page.locator("figcaption .number").allTextContents();
    expect(captions).toEqual(captions.map((_, i) => `Figure ${i + 1}.`));
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("lets a change in a field reach every result that depends on it", async () => {
    const results = ["theCar", "energyPerKm", "whichIsEnough", "theJob"];
    const { page, faults } = await openWith(browser, ...results);
    const table = () => page.locator(".answer-table").textContent();
    const before = await Promise.all(results.map((name) => finding(page, name)));
    await answered(page);
    const tableBefore = await table();
    await write(page, load, "6 cwt 2 qr");
    await worked(page);
    const after = await Promise.all(results.map((name) => finding(page, name)));
    expect(await saidAt(page, load)).toContain("330 kg");
    expect(after[0]).not.toBe(before[0]);
    expect(after[1]).not.toBe(before[1]);
    expect(after[2]).not.toBe(before[2]);
    expect(after[3]).toBe(before[3]);
    await answered(page);
    expect(await table()).not.toBe(tableBefore);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("refuses what is no load at the field, keeps it there, and goes on with the last valid job", async () => {
    const { page, faults } = await openWith(browser, "theCar", "whichIsEnough");
    const before = await finding(page, "whichIsEnough");
    for (const [typed, sentence] of [
      ["heavy", /heavy/],
      ["-40", /-40 kg is not possible \(0 to 10 ?000 kg\)/],
      ["1e99", /1e\+?99 kg is not possible/],
      ["the two of us and, on Saturdays, ".repeat(20), /characters/],
    ] as const) {
      await write(page, load, typed);
      expect(await saidAt(page, load)).toMatch(/^Wrong:/);
      expect(await saidAt(page, load)).toMatch(sentence);
      expect(await page.inputValue("#field-vehicle-load_kg")).toBe(typed);
      expect(await page.getAttribute("#field-vehicle-load_kg", "aria-invalid")).toBe("true");
      expect(await page.locator("#theCar .summary").textContent()).toContain("1 wrong");
      expect(await finding(page, "whichIsEnough")).toBe(before);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("puts the usual value in the place of an unknown one, and says so", async () => {
    const { page } = await openWith(browser, "theCar");
    await write(page, load, "unknown");
    expect(await page.inputValue("#field-vehicle-load_kg")).toBe("150");
    expect(await page.locator("#field-vehicle-load_kg-from").inputValue()).toBe("usual");
    await page.context().close();
  });

  it("takes back and does again with the keyboard", async () => {
    const { page } = await openWith(browser, "theCar");
    await write(page, load, "200");
    await page.keyboard.press("Control+z");
    expect(await page.inputValue("#field-vehicle-load_kg")).toBe("110 kg");
    expect(await page.locator('[data-place="status"]').textContent()).toBe("Undone: People and luggage.");
    await page.keyboard.press("Control+Shift+z");
    expect(await page.inputValue("#field-vehicle-load_kg")).toBe("200");
    await page.context().close();
  });

  it("moves the answer with the slider of the usual day, by the keyboard", async () => {
    const { page } = await openWith(browser, "theJob", "whichIsEnough");
    const before = await finding(page, "whichIsEnough");
    await page.focus("#slider-day");
    for (let i = 0; i < 20; i++) await page.keyboard.press("ArrowRight");
    await worked(page);
    expect(await page.inputValue("#field-usualDay_km")).toBe("58 km");
    expect(await finding(page, "whichIsEnough")).not.toBe(before);
    await page.context().close();
  });

  it("adds, copies and takes out packs", async () => {
    const { page } = await openWith(browser, "packs");
    await page.locator("#packs button", { hasText: "Copy" }).first().click();
    await worked(page);
    expect(await page.locator("#packs .list-table tbody tr:not(.row-below)").count()).toBe(6);
    expect(await page.locator("#packs .worked tbody tr").count()).toBe(6);
    await page.locator("#packs .list-table button", { hasText: "Remove" }).nth(1).click();
    await worked(page);
    expect(await page.locator("#packs .list-table tbody tr:not(.row-below)").count()).toBe(5);
    expect(await page.locator("#packs .worked tbody tr").count()).toBe(5);
    await page.context().close();
  });

  it("works another road when it is chosen", async () => {
    const { page } = await openWith(browser, "theRoad");
    await page.selectOption("#view-road", "coast");
    await worked(page);
    expect(await finding(page, "theRoad")).toContain("coast road: 16.5 km");
    await page.context().close();
  });

  it("keeps what was typed when the page is loaded again, half a word included", async () => {
    const { page } = await openWith(browser, "theJob", "theCar");
    await write(page, "usualDay_km", "51");
    await page.locator("#field-vehicle-load_kg").fill("two peop");
    await page.waitForFunction(() =>
      document.querySelector(".keeping")?.textContent?.includes("Saved in this browser"),
    );
    await page.reload();
    await worked(page);
    expect(await page.inputValue("#field-usualDay_km")).toBe("51");
    expect(await page.inputValue("#field-vehicle-load_kg")).toBe("two peop");
    expect(await saidAt(page, load)).toMatch(/^Wrong:/);
    await page.context().close();
  });

  it("can be gone through with the keyboard alone, the place always seen", async () => {
    const { page } = await openNotebook(browser);
    await worked(page);
    const seen = new Set<string>();
    for (let i = 0; i < 60; i++) {
      await page.keyboard.press("Tab");
      const focus = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const { outlineStyle, outlineWidth } = getComputedStyle(element);
        const label = element.parentElement?.classList.contains("file") ? element.nextElementSibling : element;
        const { outlineStyle: labelOutline } = getComputedStyle(label ?? element);
        const isSeen = (outlineStyle !== "none" && outlineWidth !== "0px") || labelOutline !== "none";
        return { name: element.id || element.textContent?.trim().slice(0, 40) || element.tagName, isSeen };
      });
      expect(focus).toMatchObject({ isSeen: true });
      seen.add(focus.name);
    }
    expect(seen.size).toBeGreaterThan(40);
    expect([...seen]).toContain("field-usualDay_km");
    await page.context().close();
  });
});
