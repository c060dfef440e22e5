import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { PAUSE_ms } from "../../../web/store/versionPolicy.ts";
import { finding, worked, write } from "../../support/notebookPage.ts";
import { openNotebook, startChromium } from "../../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const saved = (page: Page) => page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
const band = (page: Page) => page.getByRole("complementary", { name: "Earlier version" });
const day = (page: Page) => page.locator("#field-usualDay_km");
/** How many states are stored beside the present one, and what the present one counts of edits. */
const stored = (page: Page) =>
  page.evaluate(async () => {
    const open = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open("bellhousing");
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const all = <T>(store: string) =>
      new Promise<T[]>((resolve) => {
        const asked = open.transaction(store).objectStore(store).getAll();
        asked.onsuccess = () => resolve(asked.result);
      });
    const heads = await all<{ revision: number; editCount: number }>("heads");
    const versions = await all("versions");
    open.close();
    return { heads: heads.map(({ revision, editCount }) => [revision, editCount]), versions: versions.length };
  });

/** A job whose usual day was 61 km in one sitting and is 75 km in this one, with the list of its states open. */
async function twoStates(): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const { page, faults } = await openNotebook(browser);
  await worked(page);
  await write(page, "usualDay_km", "61 km");
  await saved(page);
  await page.addInitScript((later_ms) => {
    const { now } = Date;
    Date.now = () => now() + later_ms;
  }, PAUSE_ms);
  await page.reload();
  await worked(page);
  await write(page, "usualDay_km", "75 km");
  await worked(page);
  await saved(page);
  await page.locator(".jobs > summary").click();
  await page.getByText("Earlier versions of this job").click();
  await page
    .getByRole("button", { name: /^Look at it/ })
    .first()
    .waitFor();
  return { page, faults };
}

const lookAtFirst = async (page: Page) => {
  await page
    .getByRole("button", { name: /^Look at it/ })
    .first()
    .focus();
  await page.keyboard.press("Enter");
  await band(page).waitFor();
  await worked(page);
};

describe("an earlier version of a job", () => {
  it("is shown whole, closed to every edit, and nothing of it is stored", async () => {
    const { page, faults } = await twoStates();
    const before = await stored(page);
    const undoes = await page.getByRole("button", { name: /^Undo/ }).textContent();
    await lookAtFirst(page);
    expect(await band(page).textContent()).toMatch(/\d+ \w+ 20\d\d, \d\d:\d\d: Usual day/);
    expect(await page.evaluate(() => document.activeElement?.className)).toBe("looking-body");
    expect(await page.title()).toContain("an earlier version");
    expect(await finding(page, "theJob")).toContain("61 km");
    expect(await day(page).inputValue()).toBe("61 km");
    const open = await page
      .locator(".given, [data-place=note]")
      .locator("input, select, textarea, button")
      .evaluateAll((all) =>
        all.filter((each) => !each.matches(":disabled")).map((each) => each.id || each.textContent),
      );
    expect(open).toEqual([]);
    expect(await page.locator(".tools button:enabled, .tools select:enabled").allTextContents()).toEqual(["Print"]);
    await page.keyboard.press("Control+z");
    expect(await page.locator("[data-place=status]").textContent()).toContain("only looked at");
    await page.waitForTimeout(1500); // longer than a save waits
    expect(await stored(page)).toEqual(before);

    await page.getByRole("button", { name: "Back to the job as it is now" }).focus();
    await page.keyboard.press("Enter");
    await worked(page);
    expect(await finding(page, "theJob")).toContain("75 km");
    expect(await day(page).isEnabled()).toBe(true);
    expect(await page.getByRole("button", { name: /^Undo/ }).textContent()).toBe(undoes);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Look at it");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("becomes the job by one step, which is taken back like any other", async () => {
    const { page, faults } = await twoStates();
    await lookAtFirst(page);
    await page.getByRole("button", { name: "Make this the job" }).click();
    await band(page).waitFor({ state: "hidden" });
    await worked(page);
    expect(await day(page).inputValue()).toBe("61 km");
    expect(await day(page).isEnabled()).toBe(true);
    await saved(page);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await worked(page);
    expect(await day(page).inputValue()).toBe("75 km");
    await saved(page);
    await page.reload();
    await worked(page);
    expect(await day(page).inputValue()).toBe("75 km");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("is left by a reload, and says on paper that it is an earlier one", async () => {
    const { page } = await twoStates();
    await lookAtFirst(page);
    await page.emulateMedia({ media: "print" });
    expect(await band(page).isVisible()).toBe(true);
    expect(await band(page).getByRole("button").count()).toBe(0);
    expect(await page.locator("#energyPerKm figure").first().isVisible()).toBe(true);
    await page.emulateMedia({ media: "screen" });
    await page.reload();
    await worked(page);
    expect(await band(page).count()).toBe(0);
    expect(await day(page).inputValue()).toBe("75 km");
    await page.context().close();
  });

  it("stays in view while another tab changes the job, whose news waits for the way back", async () => {
    const { page } = await twoStates();
    await lookAtFirst(page);
    const other = await page.context().newPage();
    await other.goto(inject("notebookUrl"));
    await worked(other);
    await write(other, "usualDay_km", "88 km");
    await page.bringToFront();
    await band(page).getByText("Meanwhile another tab changed the job").waitFor();
    expect(await day(page).inputValue()).toBe("61 km");
    await page.getByRole("button", { name: "Back to the job as it is now" }).click();
    await worked(page);
    expect(await day(page).inputValue()).toBe("88 km");
    expect(await page.locator(".keeping").textContent()).toContain("Another tab changed this job");
    await page.context().close();
  });
});
