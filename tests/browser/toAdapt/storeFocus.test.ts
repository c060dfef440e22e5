import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unfold, worked } from "../../support/notebookPage.ts";
import { openNotebook, startChromium } from "../../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const focused = (page: Page) =>
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
  ["points of the torque curve", "#motor", /^Remove the point/],
];

describe("the keyboard after something was taken out", () => {
  it.each(lists)("goes to the neighbour in the list of %s, and the row comes back by undo", async (_, where, words) => {
    const { page } = await openNotebook(browser);
    await worked(page);
    await unfold(page);
    if (where === "#motor") await page.selectOption("#kind-motor-envelope", "points");
    const buttons = page.locator(where).getByRole("button", { name: words });
    const count = await buttons.count();
    expect(count).toBeGreaterThan(1);
    await buttons.last().focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => buttons.count()).toBeLessThan(count);
    await expect.poll(() => focused(page)).not.toBe("nowhere");
    expect(await page.locator(`${where} :focus`).count()).toBe(1);
    await page.keyboard.press("Control+z");
    await expect.poll(() => buttons.count()).toBe(count);
    expect(await focused(page)).not.toBe("nowhere");
    await page.context().close();
  });

  it("goes to what adds a chart and a note where the last one went", async () => {
    const { page } = await openNotebook(browser);
    await worked(page);
    await page.getByRole("button", { name: "Make a chart" }).click();
    await page
      .locator("#ownCharts")
      .getByRole("button", { name: /^Remove/ })
      .focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toBe("Make a chart");
    await page.getByRole("button", { name: "Write a note to The car" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^Take the note out of The car/ }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toContain("Write a note");
    await page.context().close();
  });

  it("stays in the list of jobs, also where the last of them went, and the job comes back", async () => {
    const { page } = await openNotebook(browser);
    await worked(page);
    await page.locator(".jobs > summary").click();
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
      await expect.poll(() => focused(page)).toMatch(/^Delete/);
    }
    await page.getByRole("button", { name: "Bring it back", exact: true }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => rows.count()).toBe(2);
    await expect.poll(() => focused(page)).not.toBe("nowhere");
    await page.context().close();
  });
});
