import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { PAUSE_ms } from "../../web/store/database/versionPolicy.ts";
import { answered, choosePaper, finding, write } from "../support/notebookPage.ts";
import { openNotebook, openWorking, startChromium } from "../support/openNotebook.ts";
import { storedRecords } from "../support/storedRecords.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const saved = (page: Page) => page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
const band = (page: Page) => page.getByRole("complementary", { name: "Earlier version" });
const day = (page: Page) => page.locator("#field-usualDay_km");
/** Until the answer, and what the job's own working says, are of the day that is shown. */
const shows = async (page: Page, day_km: number) => {
  await expect.poll(() => finding(page, "theJob"), { timeout: 30_000 }).toContain(`${day_km} km`);
  await answered(page);
  expect(await page.locator("output[for=answer-day]").textContent()).toBe(`${day_km} km`);
  expect(await day(page).inputValue()).toBe(`${day_km} km`);
};
/** What is stored, as far as looking at an earlier version could have changed it. */
const stored = async (page: Page) => {
  const { heads, versions } = await storedRecords(page);
  return { heads: heads.map(({ revision, editCount }) => [revision, editCount]), versions: versions.length };
};

/** A job whose usual day was 61 km in one sitting and is 75 km in this one, with the list of its states open. */
async function twoStates(): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const { page, faults } = await openNotebook(browser, 1440, 900, false, true);
  await openWorking(page, "theJob");
  await write(page, "usualDay_km", "61 km");
  await saved(page);
  await page.addInitScript((later_ms) => {
    const { now } = Date;
    Date.now = () => now() + later_ms;
  }, PAUSE_ms);
  await page.reload();
  await shows(page, 61);
  await write(page, "usualDay_km", "75 km");
  await shows(page, 75);
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
  await shows(page, 61);
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
    const open = await page
      .locator(
        ".given, [data-place=note], .chapter [data-place=given], #answer :is([data-part=day], [data-part=controls], [data-part=pin])",
      )
      .locator("input, select, textarea, button")
      .evaluateAll((all) =>
        all.filter((each) => !each.matches(":disabled")).map((each) => each.id || each.textContent),
      );
    expect(open).toEqual([]);
    expect(await page.locator(".tools button:enabled, .tools select:enabled").allTextContents()).toEqual(["Print"]);
    await page.keyboard.press("Control+z");
    expect(await page.locator("[data-place=status]").textContent()).toContain("only looked at");
    // A page that goes into the background saves what it has at once.
    await page.evaluate(() => dispatchEvent(new Event("pagehide")));
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
    expect(await stored(page)).toEqual(before);

    await page.getByRole("button", { name: "Back to the job as it is now" }).focus();
    await page.keyboard.press("Enter");
    await shows(page, 75);
    expect(await day(page).isEnabled()).toBe(true);
    expect(await page.locator("#answer-day").isEnabled()).toBe(true);
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
    await shows(page, 61);
    expect(await day(page).isEnabled()).toBe(true);
    await saved(page);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await shows(page, 75);
    await saved(page);
    await page.reload();
    await shows(page, 75);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it.each(["client", "workings"] as const)(
    "is left by a reload, and says on the %s paper that it is an earlier one",
    async (paper) => {
      const { page } = await twoStates();
      await lookAtFirst(page);
      await choosePaper(page, paper);
      if (paper === "client") {
        await page.getByRole("button", { name: "Preview" }).click();
        await page.waitForSelector(".paper .sheet");
      }
      await page.emulateMedia({ media: "print" });
      expect(await band(page).isVisible()).toBe(true);
      expect(await band(page).getByRole("button").count()).toBe(0);
      expect(await page.locator("#theJob .sentence").isVisible()).toBe(paper === "workings");
      expect(await page.locator(".paper .sheet").isVisible()).toBe(paper === "client");
      await page.emulateMedia({ media: "screen" });
      await page.reload();
      await shows(page, 75);
      expect(await band(page).count()).toBe(0);
      await page.context().close();
    },
  );

  it("stays in view while another tab changes the job, whose news waits for the way back", async () => {
    const { page } = await twoStates();
    await lookAtFirst(page);
    const other = await page.context().newPage();
    await other.goto(inject("notebookUrl"));
    await shows(other, 75);
    await write(other, "usualDay_km", "88 km");
    await page.bringToFront();
    await band(page).getByText("Meanwhile another tab changed the job").waitFor();
    await shows(page, 61);
    await page.getByRole("button", { name: "Back to the job as it is now" }).click();
    await shows(page, 88);
    expect(await page.locator(".keeping").textContent()).toContain("Another tab changed this job");
    await page.context().close();
  });
});
