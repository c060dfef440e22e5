import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";

// One page for all: what is removed comes back by undo, so that each finds the job as it was.
let browser: Browser;
let page: Page;
let faults: readonly string[];
beforeAll(async () => {
  browser = await startChromium();
  ({ page, faults } = await openNotebook(browser, 1440, 900, false, true));
  await openWorking(page, "packs", "motorAndGears", "theCar", "motor", "ownCharts");
  await page.waitForSelector("#ownCharts button");
  await page.evaluate(() => {
    for (const each of document.querySelectorAll("details")) each.open = true;
  });
});
afterEach(() => expect(faults).toEqual([]));
afterAll(async () => browser?.close());

const focused = () =>
  page.evaluate(() => {
    const element = document.activeElement;
    return element === null || element === document.body
      ? "nowhere"
      : (element.textContent ?? "").replace(/\s+/g, " ").trim();
  });

/** Every list that rows are taken out of by hand: where it stands, and what its button says. */
const lists: readonly (readonly [string, string, RegExp])[] = [
  ["packs", "#packs .list-table", /^Remove/],
  ["gears", "#motorAndGears .list-table", /^Remove/],
  ["accessories", "#theCar .list-table", /^Remove/],
  ["points of the torque curve", "#motor .list-table", /^Remove/],
];

describe("the keyboard after something was taken out", () => {
  it.each(lists)("goes to the neighbour in the list of %s, and the row comes back by undo", async (_, where, words) => {
    if (where.startsWith("#motor ")) await page.selectOption("#kind-motor-envelope", "points");
    const buttons = page.locator(where).getByRole("button", { name: words });
    const count = await buttons.count();
    expect(count).toBeGreaterThan(1);
    await buttons.last().focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => buttons.count()).toBeLessThan(count);
    await expect.poll(() => focused()).not.toBe("nowhere");
    expect(await page.locator(`${where} :focus`).count()).toBe(1);
    await page.keyboard.press("Control+z");
    await expect.poll(() => buttons.count()).toBe(count);
    expect(await focused()).not.toBe("nowhere");
  });

  it("goes to what adds a chart and a note where the last one went", async () => {
    await page.getByRole("button", { name: "Make a chart" }).click();
    await page
      .locator("#ownCharts")
      .getByRole("button", { name: /^Remove/ })
      .focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => focused()).toBe("Make a chart");
    await page.getByRole("button", { name: "Write a note to Car" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^Take the note out of Car/ }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => focused()).toContain("Write a note");
  });

  it("stays in the list of jobs, also where the last of them went, and the job comes back", async () => {
    const rows = page.locator(".jobs-body > .job-list > li");
    for (const count of [2, 3]) {
      await rows.first().getByRole("button", { name: /^Copy/ }).click();
      await expect.poll(() => rows.count()).toBe(count);
    }
    for (const [which, left] of [
      ["last", 2],
      ["first", 1],
    ] as const) {
      await rows[which]()
        .getByRole("button", { name: /^Delete/ })
        .focus();
      await page.keyboard.press("Enter");
      await expect.poll(() => rows.count()).toBe(left);
      await expect.poll(() => focused()).toMatch(/^Delete/);
    }
    await page.getByRole("button", { name: "Bring it back", exact: true }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => rows.count()).toBe(2);
    await expect.poll(() => focused()).not.toBe("nowhere");
  });
});
