import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, it } from "vitest";
import { chromiumFlags } from "../support/chromium.ts";
import { startChromium } from "../support/openNotebook.ts";
import { type ServedPage, serveStorePage } from "../support/serveStorePage.ts";
import { openTab, storedJobs, storedLoads, typeLoad } from "../support/storeTab.ts";

let served: ServedPage;
let browser: Browser;
let context: BrowserContext;
beforeAll(async () => {
  [served, browser] = await Promise.all([serveStorePage(), startChromium()]);
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});
beforeEach(async () => {
  context = await browser.newContext({ acceptDownloads: true });
});
afterEach(async () => context?.close());

const saveLine = (page: Page) => page.locator(".save-line");

async function saved(page: Page): Promise<void> {
  await saveLine(page).getByText("Saved in this browser").waitFor();
}

describe("half a word", () => {
  it("is there again after a reload in the middle of it", async () => {
    const page = await openTab(context, served.url);
    await typeLoad(page, "14 1/4 cw");
    await page.reload();
    await page.waitForSelector("body[data-ready]");
    expect(await page.locator("#load").inputValue()).toBe("14 1/4 cw");
  });

  it("is there again after the tab was closed in the middle of it", async () => {
    const page = await openTab(context, served.url);
    await saved(page);
    await typeLoad(page, "14 1/4 c");
    await page.close();
    const again = await openTab(context, served.url);
    expect(await again.locator("#load").inputValue()).toBe("14 1/4 c");
  });

  it("is there again after the page was killed right after the key", async () => {
    const page = await openTab(context, served.url);
    await saved(page);
    const session = await context.newCDPSession(page);
    await typeLoad(page, "14 1/");
    const crashed = page.waitForEvent("crash");
    session.send("Page.crash").catch(() => {}); // never answered: the page is gone
    await crashed;
    const again = await openTab(context, served.url);
    expect(await again.locator("#load").inputValue()).toBe("14 1/");
    expect(await again.evaluate(() => window.storePage.jobs.recovered.length)).toBe(1);
  });

  it("is there again after the whole browser was killed", async () => {
    const profile = mkdtempSync(join(tmpdir(), "bellhousing-profile-"));
    const launch = () =>
      chromium.launchPersistentContext(profile, { executablePath: inject("chromiumPath"), args: [...chromiumFlags] });
    try {
      const doomed = await launch();
      const page = await openTab(doomed, served.url);
      await typeLoad(page, "175");
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
      const again = await openTab(reborn, served.url);
      expect(await again.locator("#load").inputValue()).toBe("a quarter of a t");
      expect(Object.values(await storedJobs(again)).map((job) => job.vehicle.load_kg)).toEqual([175]);
      await reborn.close();
    } finally {
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    }
  });
});

describe("two tabs on one job", () => {
  it("show each other's edits while neither has anything unsaved", async () => {
    const first = await openTab(context, served.url);
    const second = await openTab(context, served.url);
    await typeLoad(first, "175");
    await second.locator(".news").getByText("Another tab changed this job").waitFor();
    expect(await second.locator("#load").inputValue()).toBe("175");
  });

  it("never overwrite: a frozen tab that wakes with an edit of its own is asked, and both states are kept", async () => {
    const first = await openTab(context, served.url);
    const second = await openTab(context, served.url);
    await saved(first);
    const lifecycle = await context.newCDPSession(second);
    await lifecycle.send("Page.setWebLifecycleState", { state: "frozen" });
    await typeLoad(first, "175");
    await saved(first);
    await lifecycle.send("Page.setWebLifecycleState", { state: "active" });
    await Promise.all([typeLoad(second, "300"), typeLoad(first, "180")]);
    const asked = await Promise.any(
      [first, second].map(async (page) => {
        await page.locator(".conflict").waitFor();
        return page;
      }),
    );
    expect(await asked.locator(".conflict").textContent()).toContain("Nothing was written over");
    await asked.getByRole("button", { name: "Keep mine as a copy" }).click();
    await saved(first);
    await saved(second);
    expect(await storedLoads(context, served.url)).toEqual([180, 300]);
  });

  it("lose nothing however their edits fall, and show the same where one was taken over", async () => {
    const tabs = [await openTab(context, served.url), await openTab(context, served.url)];
    await Promise.all([typeLoad(tabs[0]!, "211"), typeLoad(tabs[1]!, "322")]);
    await Promise.all(tabs.map(saved));
    const loads = await storedLoads(context, served.url);
    const shown = await Promise.all(tabs.map(async (tab) => Number(await tab.locator("#load").inputValue())));
    for (const load_kg of shown) expect(loads).toContain(load_kg);
    expect(loads).toContain(322);
  });

  it("give the state of this tab up by a click, and it can be brought back", async () => {
    const first = await openTab(context, served.url);
    const second = await openTab(context, served.url);
    await clash(first, second);
    await second.getByRole("button", { name: "Take theirs" }).click();
    await second.waitForFunction(() => document.querySelector<HTMLInputElement>("#load")?.value === "175");
    await second.getByText("Deleted, kept for thirty days (1)").click();
    await second.getByRole("button", { name: "Bring back Saloon" }).click();
    await second.getByText("Deleted, kept for thirty days").waitFor({ state: "detached" });
    expect(await storedLoads(context, served.url)).toEqual([175, 300]);
  });
});

/** Both tabs edit; the first one's save comes through while the second has an edit that it could not save yet. */
async function clash(first: Page, second: Page): Promise<void> {
  await saved(first);
  await second.evaluate(() => {
    // Timers of the second tab stand still for a while, as in a tab in the background.
    const { setTimeout: real } = window;
    Object.assign(window, {
      setTimeout: (then: () => void, wait_ms: number) => real(then, wait_ms + 3000),
    });
  });
  await typeLoad(second, "300");
  await typeLoad(first, "175");
  await second.locator(".conflict").waitFor();
}

describe("a store that gives out", () => {
  it("says at once that the browser is full, saves a file all the same, and goes on when there is room", async () => {
    // Set before the page first stores: the browser asks for its room only now and then.
    const origin = new URL(served.url).origin;
    const blank = await context.newPage();
    const session = await context.newCDPSession(blank);
    await session.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 400_000 });
    const page = await openTab(context, served.url);
    await saved(page);
    await page.evaluate(() => {
      const { jobs, withRecordedRoad } = window.storePage;
      const job = jobs.current.value?.job;
      if (job) jobs.commit(withRecordedRoad(job, 200_000), "a road of 3 MB");
    });
    await page.getByRole("alert").getByText("the browser has no room left").waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      saveLine(page).getByRole("button", { name: "Save as a file" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^saloon-.*\.bellhousing\.json$/);
    expect(JSON.parse(readFileSync(await download.path(), "utf8")).roads[1].time_s).toHaveLength(200_000);
    expect(await storedLoads(context, served.url)).toEqual([150]);
    await session.send("Storage.overrideQuotaForOrigin", { origin });
    await page.evaluate(() => window.storePage.jobs.saveDraft("title", "Saloon wit"));
    await saved(page);
    const again = await openTab(context, served.url);
    expect(Object.values(await storedJobs(again)).map((job) => job.roads.length)).toEqual([2]);
  });

  it("puts the open job there again after the database was deleted by another tab", async () => {
    const page = await openTab(context, served.url);
    await saved(page);
    const other = await context.newPage();
    await other.goto(`${served.url}nothing`);
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
    await page.locator(".news").getByText("had been cleared").waitFor();
    await saved(page);
    expect(await storedLoads(context, served.url)).toEqual([175]);
  });

  it("says that it can store only after a reload when the site's data were cleared, and has everything then", async () => {
    const page = await openTab(context, served.url);
    await saved(page);
    const session = await context.newCDPSession(page);
    await session.send("Storage.clearDataForOrigin", { origin: new URL(served.url).origin, storageTypes: "all" });
    await typeLoad(page, "175");
    await page.getByRole("alert").getByText("only after it is loaded anew").waitFor();
    await page.locator("#title").fill("Saloon, set as");
    await page.reload();
    await page.waitForSelector("body[data-ready]");
    expect(await page.locator("#load").inputValue()).toBe("175");
    expect(await page.locator("#title").inputValue()).toBe("Saloon, set as");
    expect(await storedLoads(context, served.url)).toEqual([175]);
  });

  it.each([
    ["there is no database", "Object.defineProperty(window, 'indexedDB', { value: undefined })"],
    ["opening throws", "IDBFactory.prototype.open = () => { throw new DOMException('private', 'SecurityError'); }"],
    [
      "opening is refused",
      "IDBFactory.prototype.open = () => { const r = new EventTarget(); r.error = new DOMException('broken', 'UnknownError');" +
        " setTimeout(() => r.dispatchEvent(new Event('error'))); return r; }",
    ],
  ])("works in the page and says so where %s", async (_, script) => {
    await context.addInitScript(script);
    const page = await openTab(context, served.url);
    await page.getByText("Held in this page only since").waitFor();
    expect(await page.locator(".safekeeping").textContent()).toContain("Jobs live in this page until it is closed");
    await typeLoad(page, "175");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      saveLine(page).getByRole("button", { name: "Save as a file" }).click(),
    ]);
    expect(JSON.parse(readFileSync(await download.path(), "utf8")).vehicle.load_kg).toBe(175);
  });

  it("works in the page and says so where a newer edition made the database", async () => {
    const other = await context.newPage();
    await other.goto(`${served.url}nothing`);
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
    const page = await openTab(context, served.url);
    await page.getByText("Held in this page only since").waitFor();
  });

  it("works in the page and says so where another tab blocks the database", async () => {
    const other = await context.newPage();
    await other.goto(`${served.url}nothing`);
    // A connection that does not let go, and a deletion that waits for it: whoever opens after waits too.
    await other.evaluate(
      () =>
        new Promise<void>((resolve) => {
          indexedDB.open("bellhousing", 1).onsuccess = () => {
            indexedDB.deleteDatabase("bellhousing").onblocked = () => resolve();
          };
        }),
    );
    const page = await openTab(context, served.url);
    expect(await page.locator(".safekeeping").textContent()).toContain("close the other tabs");
  });

  it("lists the jobs it can read beside a record it cannot, and leaves that alone", async () => {
    const page = await openTab(context, served.url);
    await saved(page);
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          indexedDB.open("bellhousing").onsuccess = (event) => {
            const database = (event.target as IDBOpenDBRequest).result;
            const tx = database.transaction("heads", "readwrite");
            tx.objectStore("heads").put({ id: "torn", revision: "?" });
            tx.oncomplete = () => {
              database.close();
              resolve();
            };
          };
        }),
    );
    const again = await openTab(context, served.url);
    expect(await again.locator(".safekeeping").textContent()).toContain("One record in it cannot be read");
    expect(await again.locator(".job").count()).toBe(1);
  });
});
