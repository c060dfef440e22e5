import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { axeFinds } from "../support/axeFinds.ts";
import { changedDemoFile } from "../support/changedDemo.ts";
import { answered, expectNoSidewaysScroll, sampled, worked } from "../support/notebookPage.ts";
import { type OpenNotebook, openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

const openAnswer = (width = 1440, height = 900, hasTouch = false) =>
  openNotebook(browser, width, height, hasTouch, true);
const verdict = (page: Page) => page.locator("#answer .verdict").textContent();
const boxOf = async (page: Page, part: string) => {
  const box = await page.locator(`#answer [data-part="${part}"]`).boundingBox();
  if (!box) throw new Error(`no ${part} on the page`);
  return { ...box, bottom: box.y + box.height };
};

async function open(
  page: Page,
  changes: Readonly<Record<string, unknown>> & { readonly title: string },
): Promise<void> {
  await page.setInputFiles("#job-file", changedDemoFile(changes));
  await page.waitForFunction((title) => document.querySelector("h1")?.textContent === title, changes.title);
  await answered(page);
}

describe("the answer screen", () => {
  it.each([
    [1440, 900],
    [1280, 720],
    [2560, 1300],
  ])("is whole without scrolling at %i by %i", async (width, height) => {
    const { page, faults } = await openAnswer(width, height);
    await answered(page);
    for (const part of ["say", "picture", "table", "day", "settle", "controls", "pin"]) {
      expect((await boxOf(page, part)).bottom, part).toBeLessThanOrEqual(height);
    }
    expect(await page.locator("#answer .row").count()).toBe(4);
    await expectNoSidewaysScroll(page);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it.each([
    [1440, 900, 4],
    [390, 844, 8],
  ])("stands on a page of few screens at %i by %i, the workings folded", async (width, height, screens) => {
    const { page, faults } = await openAnswer(width, height);
    await worked(page);
    const page_px = await page.evaluate(() => document.documentElement.scrollHeight);
    expect(page_px).toBeLessThanOrEqual(screens * height);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("shows verdict, slider and picture within a screen and a half of a phone", async () => {
    const { page, faults } = await openAnswer(390, 844, true);
    await answered(page);
    for (const part of ["say", "day", "picture"]) {
      expect((await boxOf(page, part)).bottom, part).toBeLessThanOrEqual(1.5 * 844);
    }
    await expectNoSidewaysScroll(page);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("follows the slider with the verdict, and keeps a tick where it was", async () => {
    const { page, faults } = await openAnswer();
    await answered(page);
    expect(await verdict(page)).toBe("13 kWh: enough.");
    await page.locator("#answer-day").fill("48");
    expect(await page.locator("output[for=answer-day]").textContent()).toBe("48 km");
    expect(await verdict(page)).toBe("17 kWh: enough.");
    expect(await page.locator("#answer .say").textContent()).toMatch(/^A usual day of 48.km ends with/);
    expect(await page.locator(".day-tick.was").count()).toBe(1);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("says beside a verdict near its band that it is being checked, which moves nothing, and no longer once it is", async () => {
    const { page, faults } = await openAnswer();
    await sampled(page);
    expect(await page.locator("#answer .checking").count()).toBe(0);
    const before = await boxOf(page, "picture");
    const load = page.locator("#answer-field-vehicle-load_kg");
    await load.fill("112");
    await load.blur();
    await page.locator("#answer .checking").waitFor({ state: "attached" });
    expect(await boxOf(page, "picture")).toEqual(before);
    await page.locator("#answer .checking").waitFor({ state: "detached" });
    await sampled(page);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("holds a pinned state beside the present one, in the job, and goes back to it as a step that can be undone", async () => {
    const { page, faults } = await openAnswer();
    await answered(page);
    await page.getByRole("button", { name: "Pin this" }).click();
    await page.locator("#answer-day").fill("50");
    expect(await page.locator("#answer .pin").textContent()).toContain("usual day 38 km");
    expect(await page.locator("#answer svg .pinned").count()).toBeGreaterThan(3);
    expect(await page.locator("#answer td.pinned").count()).toBe(4);
    await page.waitForFunction(() => /^Saved/.test(document.querySelector(".keeping")?.textContent?.trim() ?? ""));
    await page.reload();
    await answered(page);
    expect(await page.locator("#answer .pin").textContent()).toContain("usual day 38 km");
    await page.getByRole("button", { name: "Back to pinned" }).click();
    expect(await page.inputValue("#answer-day")).toBe("38");
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await page.inputValue("#answer-day")).toBe("50");
    await page.getByRole("button", { name: "Unpin" }).click();
    expect(await page.locator("#answer .pinned").count()).toBe(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("is read by keys: up and down choose a pack, left and right read along it, Escape ends", async () => {
    const { page, faults } = await openAnswer();
    await answered(page);
    await page.locator(".answer-figure").focus();
    await page.keyboard.press("ArrowDown");
    expect(await verdict(page)).toBe("17 kWh: more than enough.");
    await page.keyboard.press("Home");
    await page.keyboard.press("PageUp");
    await page.keyboard.press("ArrowLeft");
    expect(await page.locator(".answer-reading").textContent()).toMatch(
      // By the marks, or by the year once it is driven.
      /17 kWh, (home with 9 km left or more: new: yes|new: 2\d\d of 240 driving days end with 9 km left or more)/,
    );
    expect(await page.locator(".reading-line").count()).toBe(1);
    await page.keyboard.press("Escape");
    expect(await page.locator(".reading-line").count()).toBe(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("is reached within ten presses of Tab", async () => {
    const { page } = await openAnswer();
    await answered(page);
    const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim());
    // From the top of the page, wherever the browser begins.
    await page.evaluate(() => {
      document.body.tabIndex = -1;
      document.body.focus();
    });
    for (let k = 0; k < 10 && (await focused()) !== "To the answer"; k++) await page.keyboard.press("Tab");
    expect(await focused()).toBe("To the answer");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("answer");
    await page.context().close();
  });

  it("has nothing that axe finds, with a pinned state too", async () => {
    const { page } = await openAnswer();
    await answered(page);
    await page.getByRole("button", { name: "Pin this" }).click();
    await page.locator("#answer-day").fill("50");
    expect(await axeFinds(page, { within: ["#answer", ".masthead"], least: 15 })).toEqual([]);
    await page.context().close();
  });
});

describe("the answer to a job that is opened", () => {
  let notebook: OpenNotebook;
  beforeAll(async () => {
    notebook = await openAnswer();
    await answered(notebook.page);
  });

  it("puts a stop in the place of a pack's kilometres, and never recommends it", async () => {
    const { page, faults } = notebook;
    await open(page, { title: "With a stop", "packs.1.seriesModules": 8, "packs.1.name": "8s3p" });
    expect(await verdict(page)).toBe("17 kWh: enough.");
    const row = page.locator(".answer-table tr", { hasText: "8s3p" });
    expect(await row.textContent()).toContain("Full, this pack has 202 V");
    await row.getByRole("button").click();
    expect(await verdict(page)).toBe("8s3p: stop.");
    expect(await page.locator("#answer .ways").textContent()).toMatch(/Use 5 in series\s+Change the controller/);
    expect(await page.locator("#answer .is-stop .say").textContent()).not.toMatch(/\d.km/);
    expect(faults).toEqual([]);
  });

  it.each([
    ["a car that does not start", { "controller.torqueCap_Nm": 3 }, /^The car cannot drive this road\.$/],
    ["no pack that is enough", { usualDay_km: 190 }, /^29 kWh: not enough\.$/],
    [
      "names with markup",
      { "packs.1.name": "<img src=x onerror=alert(1)>" },
      /^<img src=x onerror=alert\(1\)>: enough\.$/,
    ],
    ["nothing unknown", { origins: {} }, /^13 kWh: enough\.$/],
  ])("says what is so of %s", async (title, changes, words) => {
    const { page, faults } = notebook;
    await open(page, { title, ...changes });
    expect(await verdict(page)).toMatch(words);
    expect(await page.locator("#answer").textContent()).not.toMatch(/NaN|undefined|Infinity/);
    expect(await page.locator("#answer img").count()).toBe(0);
    await expectNoSidewaysScroll(page);
    expect(faults).toEqual([]);
  });
});
