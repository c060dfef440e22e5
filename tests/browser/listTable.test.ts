import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { finding, openFolds, saidAt, worked } from "../support/notebookPage.ts";
import { openNotebook, openWith, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const field = (row: number, key: string) => `#field-packs-${row}-${key}`;
const textIn = (page: Page, row: number, key: string) => page.inputValue(field(row, key));
const rowCount = (page: Page) => page.locator("#packs .list-table tbody tr:not(.row-below)").count();
const focused = (page: Page) => page.evaluate(() => document.activeElement?.id ?? "");

/** Pastes a text into the field that has the focus, as a spreadsheet hands it over. */
async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((words) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", words);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }),
    );
  }, text);
  await worked(page);
}

describe("the table of packs", () => {
  it("takes rows of a spreadsheet by their heads, makes rows where they end, and is undone in one step", async () => {
    const { page, faults } = await openNotebook(browser);
    await worked(page);
    const before = await rowCount(page);
    const names = await Promise.all(Array.from({ length: before }, (_, i) => textIn(page, i, "name")));
    const last = before - 1;
    await page.focus(field(last, "name"));
    await paste(page, "In parallel\tName\n6\tpasted one\n7\tpasted two\nmany\tpasted three\n");
    expect(await rowCount(page)).toBe(before + 2);
    expect(await textIn(page, last, "name")).toBe("pasted one");
    expect(await textIn(page, last, "parallelModules")).toBe("6");
    expect(await textIn(page, last + 1, "parallelModules")).toBe("7");
    // What cannot be read stays as it was pasted, with a sentence below it.
    expect(await textIn(page, last + 2, "parallelModules")).toBe("many");
    expect(await saidAt(page, `packs.${last + 2}.parallelModules`)).toContain("found many");

    await page.locator("button", { hasText: "Undo" }).first().click();
    await worked(page);
    expect(await rowCount(page)).toBe(before);
    expect(await Promise.all(names.map((_, i) => textIn(page, i, "name")))).toEqual(names);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("goes down by Enter, between cells by arrows, and undoes a cell by Escape", async () => {
    const { page, faults } = await openNotebook(browser);
    await worked(page);
    const before = await textIn(page, 0, "parallelModules");
    await page.focus(field(0, "parallelModules"));
    await page.keyboard.press("Enter");
    expect(await focused(page)).toBe(field(1, "parallelModules").slice(1));
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowLeft");
    expect(await focused(page)).toBe(field(0, "seriesModules").slice(1));
    await page.keyboard.press("ArrowRight");
    await page.keyboard.type("9");
    await page.keyboard.press("ArrowLeft"); // in the text now
    expect(await focused(page)).toBe(field(0, "parallelModules").slice(1));
    expect(await textIn(page, 0, "parallelModules")).toBe("9");
    await page.keyboard.press("Escape");
    expect(await textIn(page, 0, "parallelModules")).toBe(before);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("reads downwards on a phone, each value with its head", async () => {
    const { page } = await openNotebook(browser, 390, 844);
    await worked(page);
    const label = page.locator(`label[for="${field(0, "parallelModules").slice(1)}"]`);
    expect(await label.isVisible()).toBe(true);
    const [name, parallel] = await Promise.all(
      ["name", "parallelModules"].map((key) => page.locator(field(0, key)).boundingBox()),
    );
    expect(parallel?.y ?? 0).toBeGreaterThan(name?.y ?? 0);
    await page.context().close();
  });
});

describe("the table of an old engine's curve", () => {
  it("takes a pasted curve by its heads, in the unit that a head names, and puts it into the pace", async () => {
    const { page, faults } = await openWith(browser, "motor", "pace");
    await openFolds(page);
    for (const key of ["ratedTorque_Nm", "torque_rpm", "ratedPower_kW", "power_rpm"])
      await page.fill(`#field-engine-${key}`, "");
    await page.getByRole("button", { name: "Add the torque curve" }).click();
    await worked(page);
    const cell = (row: number, key: string) => `#field-engine-curve-${key}-${row}`;
    await page.focus(cell(0, "speed_rpm"));
    await paste(page, "Torque (lb ft)\tSpeed (rpm)\n65\t1000\n80\t2000\n78\t3000\n70\t4000\n58\t5000\n");
    expect(await page.locator("[id^=field-engine-curve-speed_rpm-]:is(input)").count()).toBe(5);
    expect(await page.inputValue(cell(4, "torque_Nm"))).toBe("58 lb ft");
    expect(await page.locator("#group-engine-curve [aria-invalid=true]").count()).toBe(0);
    // 80 lb ft are 108.5 Nm; 58 lb ft, 78.6 Nm, at 5000 rpm are 41.2 kW.
    expect(await finding(page, "motor")).toContain(
      "The old engine gave 108 Nm at 2000 rpm and 41.2 kW at 5000 rpm, its curve as typed.",
    );
    expect(await finding(page, "pace")).toContain("as typed, from 1000 rpm to 5000 rpm");
    await page.focus(cell(1, "speed_rpm"));
    await page.keyboard.press("Control+a");
    await page.keyboard.type("3500");
    await page.keyboard.press("Tab");
    await worked(page);
    expect(await saidAt(page, "engine.curve.speed_rpm.1")).toBe(
      "Wrong: Engine speed, no. 3: found 3000 rpm after 3500 rpm, speeds must rise. Using 2000 rpm.",
    );
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
