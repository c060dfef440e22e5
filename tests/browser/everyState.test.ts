import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeLog, makeTruth, openSky } from "../logs/logMaker.ts";
import { writeGpx } from "../logs/logWriter.ts";
import { axeFinds } from "../support/axeFinds.ts";
import { changedDemoFile } from "../support/changedDemo.ts";
import { cycleSpeeds_mps } from "../support/cycleSpeeds.ts";
import { answered, openWorking, worked } from "../support/notebookPage.ts";
import { type OpenNotebook, openNotebook, startChromium } from "../support/openNotebook.ts";

let browser: Browser;
let notebook: OpenNotebook;
beforeAll(async () => {
  browser = await startChromium();
  notebook = await openNotebook(browser, 1440, 900, false, true);
  await notebook.page.emulateMedia({ reducedMotion: "reduce" });
});
afterAll(async () => browser?.close());

const verdict = async (page: Page) => (await page.locator("#answer .verdict").textContent()) ?? "";

/** Opens a demo with changes, and waits for its answer. */
async function show(page: Page, changes: Readonly<Record<string, unknown>>, id?: string): Promise<void> {
  const title = `State ${Math.random()}`;
  await page.setInputFiles("#job-file", changedDemoFile({ ...changes, title }, id));
  await page.waitForFunction((wanted) => document.querySelector("h1")?.textContent === wanted, title);
  await answered(page);
}

/** Where a state differs from the first one, which is looked at whole; others too where nothing is named here. */
const differsIn: Readonly<Record<string, readonly string[]>> = {
  "only just": ["#answer", "#chapters"],
  "not enough": ["#answer", "#chapters"],
  "a stop": ["#answer", "#chapters"],
  "a field in error and a working open": ["#answer", "#theCar"],
  "a log dropped": ["#answer", "#theRoad"],
  "the list of jobs": [".masthead", ".jobs"],
};
const inPreview = [".paper-tools", ".paper"];

/** What axe finds by day, and what it finds of contrast by night, where nothing but colours differs. */
async function findsByDayAndNight(page: Page, within: readonly string[] | undefined): Promise<string[]> {
  const byDay = await axeFinds(page, within ? { within, least: 10 } : { least: 16 });
  await page.emulateMedia({ colorScheme: "dark" });
  const byNight = await axeFinds(page, { ...(within && { within }), rule: "color-contrast", least: 1 });
  await page.emulateMedia({ colorScheme: "light" });
  return [...byDay, ...byNight.map((each) => `by night ${each}`)];
}

const states: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  async "enough, and pinned"(page) {
    await answered(page);
    expect(await verdict(page)).toMatch(/: enough\.$/);
    await page.getByRole("button", { name: "Pin this" }).click();
    await page.locator("#answer-day").fill("50");
    await answered(page);
    expect(await page.locator("#answer .pinned").count()).toBeGreaterThan(3);
  },
  async "only just"(page) {
    await show(page, {}, "bakery-van");
    expect(await verdict(page)).toMatch(/: only just\.$/);
  },
  async "not enough"(page) {
    await show(page, { usualDay_km: 190 });
    expect(await verdict(page)).toMatch(/: not enough\.$/);
  },
  async "a stop"(page) {
    await show(page, { "packs.1.seriesModules": 8, "packs.1.name": "8s3p" });
    await page.locator(".answer-table tr", { hasText: "8s3p" }).getByRole("button").click();
    expect(await verdict(page)).toBe("8s3p: stop.");
  },
  async "a car that does not drive the road"(page) {
    await show(page, { "controller.torqueCap_Nm": 3 });
    expect(await verdict(page)).toBe("The car cannot drive this road.");
  },
  async "a new job, nearly everything unknown"(page) {
    await page.getByRole("button", { name: "New job" }).click();
    await page.locator(".first-questions").waitFor();
    await answered(page);
  },
  async "a field in error and a working open"(page) {
    await show(page, {});
    await openWorking(page, "theCar");
    await worked(page);
    await page.locator("#field-vehicle-kerb_kg").fill("-5");
    await page.locator("#field-vehicle-kerb_kg").blur();
    await page.locator("#field-vehicle-kerb_kg[aria-invalid=true]").waitFor();
  },
  async "a log dropped"(page) {
    const truth = makeTruth(cycleSpeeds_mps("nycc"), 1, (d) => 100 + 30 * Math.sin(d / 900));
    const log = writeGpx(makeLog(truth, { ...openSky, seed: 1 }, 1714723200));
    await openWorking(page, "theRoad");
    await page.setInputFiles("#road-log", { name: "day.gpx", mimeType: "text/plain", buffer: Buffer.from(log) });
    await page.locator("#theRoad .offer").waitFor({ timeout: 60_000 });
    await worked(page);
    await answered(page);
  },
  async "the list of jobs"(page) {
    await page.locator(".jobs > summary").click();
    expect(await page.locator(".jobs-body").isVisible()).toBe(true);
  },
};
for (const paper of ["Client sheet", "Visit form, blank", "Handover page", "Service card"]) {
  Object.assign(states, {
    [`${paper} in its preview`]: async (page: Page) => {
      if (await page.locator(".jobs-body").isVisible()) await page.locator(".jobs > summary").click();
      await answered(page);
      await page.locator(".paper-tools select").selectOption({ label: paper });
      const preview = page.getByRole("button", { name: "Preview", exact: true });
      if ((await preview.count()) > 0) await preview.click();
      await page.locator(".paper .sheet").waitFor();
    },
  });
}

describe("everybody can read and use, by day and by night,", () => {
  it.each(Object.entries(states))("%s", async (state, make) => {
    const { page, faults } = notebook;
    await make(page);
    const within = state.endsWith("preview") ? inPreview : differsIn[state];
    expect(await findsByDayAndNight(page, within)).toEqual([]);
    expect(faults).toEqual([]);
  });
});

it("by night the page is dark, its figures too, and paper stays light", async () => {
  const { page } = notebook;
  await page.emulateMedia({ colorScheme: "dark" });
  const light = () =>
    page.evaluate(() => {
      const of = (colour: string) =>
        (colour.match(/[\d.]+/g) ?? []).slice(0, 3).reduce((sum, part) => sum + Number(part) / 765, 0);
      const ink = (selector: string) =>
        [...document.querySelectorAll(selector)].map((each) => of(getComputedStyle(each).fill));
      return {
        ground: of(getComputedStyle(document.documentElement).backgroundColor),
        words: ink(".chapter figure svg text, #answer svg text"),
        sheet: of(getComputedStyle(document.querySelector(".sheet") as Element).backgroundColor),
      };
    });
  const night = await light();
  expect(night.ground).toBeLessThan(0.15);
  expect(night.sheet).toBe(1);
  expect(night.words.length).toBeGreaterThan(20);
  expect(night.words.filter((each) => each < 0.4).length).toBeLessThan(4); // words on a light bar
  await page.emulateMedia({ colorScheme: "dark", media: "print" });
  const printed = await light();
  expect(Math.max(...printed.words.filter((each) => each < 0.9))).toBeLessThan(0.6);
  await page.emulateMedia({ colorScheme: "light", media: "screen" });
});
