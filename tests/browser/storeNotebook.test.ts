import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { saidAt, unfold, worked } from "../support/notebookPage.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";

// The storage of jobs as the notebook itself uses it; how it holds out by itself is in the tests beside this one.

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const load = "#field-vehicle-load_kg";

async function saved(page: Page): Promise<void> {
  await page.locator(".keeping").getByText("Saved in this browser").waitFor();
}

async function another(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(inject("notebookUrl"));
  await worked(page);
  return page;
}

describe("a job in the notebook", () => {
  it("has half a word back in its field after the page was killed at the last key", async () => {
    const { page } = await openNotebook(browser);
    await worked(page);
    await saved(page);
    await page.locator(load).selectText();
    await page.keyboard.type("a quarter of a t");
    const crashed = page.waitForEvent("crash");
    const session = await page.context().newCDPSession(page);
    session.send("Page.crash").catch(() => {}); // never answered: the page is gone
    await crashed;
    const again = await another(page.context());
    expect(await again.inputValue(load)).toBe("a quarter of a t");
    expect(await saidAt(again, "vehicle.load_kg")).toMatch(/^To mend:/);
    await again.context().close();
  });

  it("has a value back after the tab was closed the moment it was typed", async () => {
    const { page } = await openNotebook(browser);
    await worked(page);
    const context = page.context();
    await page.locator(load).selectText();
    await page.keyboard.type("212 kg");
    await page.close();
    const again = await another(context);
    expect(await again.inputValue(load)).toMatch(/^212/);
    await context.close();
  });

  it("is kept twice where two tabs changed it at once, and the later one is asked", async () => {
    const { page, faults } = await openNotebook(browser);
    await worked(page);
    await saved(page);
    const second = await another(page.context());
    // The second tab's timers stand still for a while, as in a tab in the background: its save comes late.
    await second.evaluate(() => {
      const { setTimeout: real } = window;
      Object.assign(window, { setTimeout: (then: () => void, wait_ms: number) => real(then, wait_ms + 3000) });
    });
    await second.locator(load).selectText();
    await second.keyboard.type("300 kg");
    await page.locator(load).selectText();
    await page.keyboard.type("175 kg");
    const choice = second.getByText("Another tab changed this job");
    await choice.waitFor();
    expect(await second.inputValue(load)).toMatch(/^300/);
    expect(await page.inputValue(load)).toMatch(/^175/);
    await saved(page);
    await saved(second);
    const third = await another(page.context());
    await unfold(third);
    expect(await third.locator(".job-list > li", { hasText: "Piano tuner" }).count()).toBeGreaterThanOrEqual(2);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
