import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { axeFinds } from "../support/axeFinds.ts";
import { expectNoSidewaysScroll, worked } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

/** The number that the verdict's figure has now. */
async function verdictNumber(page: Page): Promise<number> {
  const caption = await page.locator("#whichIsEnough figcaption .number").textContent();
  return Number(/\d+/.exec(caption ?? "")?.[0]);
}

describe("a note that names a figure", () => {
  it("takes it from the list, and follows it when a chart comes above it, is taken back, and the page is opened again", async () => {
    const { page, faults } = await openNotebook(browser);
    await worked(page);
    const field = page.locator("#field-notes-0-text");
    const link = page.locator("#whichIsEnough .note-read a");
    await page.getByRole("button", { name: "Write a note to Which pack is enough" }).click();
    await field.fill("Settled by ");
    await page.getByText("Name a figure in it").click();
    const first = await verdictNumber(page);
    await page
      .locator(".figures-to-name")
      .getByRole("button", { name: `Figure ${first}`, exact: true })
      .click();
    expect(await field.inputValue()).toBe(`Settled by Figure ${first}`);
    await field.blur();
    await link.waitFor();
    expect(await link.getAttribute("href")).toBe(`#figure-${first}`);

    await page.getByRole("button", { name: "Make a chart" }).click();
    await worked(page);
    const second = first + 1;
    await expect.poll(() => verdictNumber(page)).toBe(second);
    await expect.poll(() => field.inputValue()).toBe(`Settled by Figure ${second}`);
    await expect.poll(() => link.textContent()).toBe(`Figure ${second}`);

    await page.getByRole("button", { name: /Hide from client.*Which pack is enough/ }).click();
    await expect.poll(() => link.textContent()).toBe(`Figure ${second} (hidden from client)`);
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
    await worked(page);
    await expect.poll(() => link.textContent()).toBe(`Figure ${first}`);

    await page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
    await page.reload();
    await worked(page);
    await link.waitFor();
    expect(await field.inputValue()).toBe(`Settled by Figure ${first}`);
    expect(await link.getAttribute("href")).toBe(`#figure-${first}`);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it.each([1440, 390])("can be written and read by everybody at %d px", async (width) => {
    const { page } = await openNotebook(browser, width, 900, false, true);
    await openWorking(page, "whichIsEnough");
    await worked(page);
    await page.getByRole("button", { name: "Write a note to Which pack is enough" }).click();
    await page.locator("#field-notes-0-text").fill("See Figure 1, {Figure theRoad.log} and 38 km.\n\n- **one**\n- two");
    await page.getByText("Name a figure in it").click();
    await page.locator("#whichIsEnough .note-read a").waitFor();
    expect(await page.locator("#whichIsEnough .note-read").textContent()).toContain(
      "not on the page now (theRoad.log)",
    );
    await expectNoSidewaysScroll(page);
    expect(await axeFinds(page, { within: ["#whichIsEnough"], least: 15 })).toEqual([]);
    await page.context().close();
  });
});
