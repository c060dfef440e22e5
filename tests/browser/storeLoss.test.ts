import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from "vitest";
import { jobText } from "../../shared/job/jobText.ts";
import { chromiumFlags } from "../support/chromium.ts";
import { inventedJob, withRecordedRoad } from "../support/inventedJob.ts";
import { openWorking, startChromium } from "../support/openNotebook.ts";
import { storedLoads } from "../support/storedRecords.ts";

// What may befall a page, its browser and the browser's database while somebody types.

// The field of the answer screen: it is there as soon as the job is.
const load = "#answer-field-vehicle-load_kg";

let browser: Browser;
let context: BrowserContext;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());
beforeEach(async () => {
  context = await browser.newContext({ acceptDownloads: true });
});
afterEach(async () => context?.close());

const keeping = (page: Page) => page.locator(".keeping");
const saved = (page: Page) => keeping(page).getByText("Saved in this browser").waitFor();
const choice = (page: Page) => page.getByText(/Another tab (changed|deleted) this job( while|\. What)/);

async function openTab(inContext: BrowserContext = context): Promise<Page> {
  const page = await inContext.newPage();
  await page.goto(inject("notebookUrl"));
  await page.waitForSelector(load);
  return page;
}

/** A page of the notebook's origin on which no notebook runs. */
async function bareTab(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${inject("notebookUrl")}nothing`);
  return page;
}

/** Types over what stands in the field of the load, key by key, and does not wait for anything after. */
async function typeLoad(page: Page, text: string): Promise<void> {
  await page.locator(load).selectText();
  await page.keyboard.type(text);
}

/** Timers of the page stand still for a while, as in a tab in the background: its saves come late. */
const slow = (page: Page) =>
  page.evaluate(() => {
    const { setTimeout: real } = window;
    Object.assign(window, { setTimeout: (then: () => void, wait_ms: number) => real(then, wait_ms + 3000) });
  });

describe("half a word", () => {
  it("is there again after a reload in the middle of it, with what is wrong with it", async () => {
    const page = await openTab();
    await typeLoad(page, "14 1/4 c");
    await page.reload();
    await page.waitForSelector(load);
    expect(await page.inputValue(load)).toBe("14 1/4 c");
    expect((await page.locator(`${load}-says`).textContent())?.trim()).not.toBe("");
  });

  it("is there again after the page was killed right after the key", async () => {
    const page = await openTab();
    await saved(page);
    const session = await context.newCDPSession(page);
    await typeLoad(page, "a quarter of a t");
    const crashed = page.waitForEvent("crash");
    session.send("Page.crash").catch(() => {}); // never answered: the page is gone
    await crashed;
    const again = await openTab();
    expect(await again.inputValue(load)).toBe("a quarter of a t");
  });

  it("is there again after the whole browser was killed", async () => {
    const profile = mkdtempSync(join(tmpdir(), "bellhousing-profile-"));
    const launch = () =>
      chromium.launchPersistentContext(profile, { executablePath: inject("chromiumPath"), args: [...chromiumFlags] });
    try {
      const doomed = await launch();
      const page = await openTab(doomed);
      await typeLoad(page, "175 kg");
      await page.locator(load).blur(); // what is typed next is an edit of its own
      await saved(page);
      await typeLoad(page, "a quarter of a t");
      // Long enough for the words to leave the page, far too short for the save that folds them into the job.
      await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 50)));
      const session = await doomed.browser()!.newBrowserCDPSession();
      const { processInfo } = await session.send("SystemInfo.getProcessInfo");
      const gone = new Promise((resolve) => doomed.once("close", resolve));
      process.kill(processInfo.find(({ type }) => type === "browser")!.id, "SIGKILL");
      await gone;

      const reborn = await launch();
      const again = await openTab(reborn);
      expect(await again.inputValue(load)).toBe("a quarter of a t");
      expect(await storedLoads(again)).toEqual([175]);
      await reborn.close();
    } finally {
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    }
  });
});

describe("a value", () => {
  it("is there again after the tab was closed the moment it was typed", async () => {
    const page = await openTab();
    await typeLoad(page, "212 kg");
    await page.close();
    expect(await (await openTab()).inputValue(load)).toMatch(/^212/);
  });
});

describe("two tabs on one job", () => {
  it("never overwrite: a frozen tab that wakes with an edit of its own is asked, and both states are kept", async () => {
    const first = await openTab();
    const second = await openTab();
    await saved(first);
    const lifecycle = await context.newCDPSession(second);
    await lifecycle.send("Page.setWebLifecycleState", { state: "frozen" });
    await typeLoad(first, "175");
    await saved(first);
    await lifecycle.send("Page.setWebLifecycleState", { state: "active" });
    // Neither writes before both have an edit, however busy the machine is.
    await Promise.all([slow(first), slow(second)]);
    await Promise.all([typeLoad(second, "300"), typeLoad(first, "180")]);
    const asked = await Promise.any(
      [first, second].map((page) =>
        choice(page)
          .waitFor()
          .then(() => page),
      ),
    );
    await asked.getByRole("button", { name: "My copy, here" }).click();
    await saved(first);
    await saved(second);
    expect(await storedLoads(first)).toEqual([180, 300]);
  });

  it("give the state of this tab up by a click, and it can be brought back", async () => {
    const first = await openTab();
    const second = await openTab();
    await saved(first);
    await slow(second);
    await typeLoad(second, "300");
    await typeLoad(first, "175");
    await choice(second).waitFor();
    await second.getByRole("button", { name: "What the other tab has" }).click();
    await expect.poll(() => second.inputValue(load)).toMatch(/^175/);
    expect(await storedLoads(second)).toEqual([175]);
    await second.locator(".jobs > summary").click();
    await second.getByText(/^Deleted, and not yet gone/).click();
    await second
      .getByRole("button", { name: /^Bring it back/ })
      .first()
      .click();
    await expect.poll(() => storedLoads(second)).toEqual([175, 300]);
  });
});

describe("a store that gives out", () => {
  it("says at once that the browser is full, asks before the page closes, and goes on when there is room", async () => {
    // Set before the page first stores: the browser asks for its room only now and then.
    const { origin } = new URL(inject("notebookUrl"));
    const blank = await context.newPage();
    const session = await context.newCDPSession(blank);
    await session.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 400_000 });
    const page = await openTab();
    await saved(page);
    const large = jobText(withRecordedRoad(inventedJob("Long way"), 200_000));
    await page
      .locator("#job-file")
      .setInputFiles({ name: "long.json", mimeType: "application/json", buffer: Buffer.from(large) });
    await keeping(page).getByText("the browser has no room left").waitFor({ timeout: 60_000 });
    await typeLoad(page, "177 kg");
    const asked = page.waitForEvent("dialog");
    const closing = page.close({ runBeforeUnload: true });
    const dialog = await asked;
    expect(dialog.type()).toBe("beforeunload");
    await dialog.dismiss();
    await closing;
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save it as a file now" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^long-way-.*\.bellhousing\.json$/);
    expect(JSON.parse(readFileSync(await download.path(), "utf8")).roads[1].time_s).toHaveLength(200_000);
    expect(await storedLoads(page)).toEqual([expect.any(Number)]);
    await session.send("Storage.overrideQuotaForOrigin", { origin });
    await typeLoad(page, "178 kg");
    await saved(page);
    expect(await storedLoads(page)).toContain(178);
  });

  it("puts the open job there again after the database was deleted by another tab", async () => {
    const page = await openTab();
    await saved(page);
    const other = await bareTab();
    const how = await other.evaluate(
      () =>
        new Promise<string>((resolve) => {
          const request = indexedDB.deleteDatabase("bellhousing");
          request.onsuccess = () => resolve("deleted");
          request.onerror = () => resolve("refused");
        }),
    );
    expect(how).toBe("deleted");
    await typeLoad(page, "175");
    await keeping(page).getByText("had been cleared").waitFor();
    await saved(page);
    expect(await storedLoads(page)).toEqual([175]);
  });

  it("says that it can store only after a reload when the site's data were cleared, and has everything then", async () => {
    const page = await openTab();
    await saved(page);
    const session = await context.newCDPSession(page);
    const { origin } = new URL(inject("notebookUrl"));
    await session.send("Storage.clearDataForOrigin", { origin, storageTypes: "all" });
    await typeLoad(page, "175");
    await keeping(page).getByText("only after it is loaded anew").waitFor();
    await openWorking(page, "theJob");
    await page.locator("#field-title").fill("Saloon, set aside");
    await page.reload();
    await page.waitForSelector(load);
    expect(await page.inputValue(load)).toMatch(/^175/);
    expect(await page.locator("h1").textContent()).toBe("Saloon, set aside");
    expect(await storedLoads(page)).toEqual([175]);
  });

  it("works in the page and says so where a newer edition made the database", async () => {
    const other = await bareTab();
    await other.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const request = indexedDB.open("bellhousing", 99);
          request.onsuccess = () => {
            request.result.close();
            resolve();
          };
        }),
    );
    await keeping(await openTab())
      .getByText("Held in this page only")
      .waitFor();
  });

  it("works in the page and says so where another tab blocks the database", async () => {
    const other = await bareTab();
    // A connection that does not let go, and a deletion that waits for it: whoever opens after waits too.
    await other.evaluate(
      () =>
        new Promise<void>((resolve) => {
          indexedDB.open("bellhousing", 1).onsuccess = () => {
            indexedDB.deleteDatabase("bellhousing").onblocked = () => resolve();
          };
        }),
    );
    await keeping(await openTab())
      .getByText("close the other tabs")
      .waitFor();
  });
});
