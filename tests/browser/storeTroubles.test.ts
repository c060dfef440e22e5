import { writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { jobText } from "../../shared/job/jobText.ts";
import { emptyFolder } from "../support/emptyFolder.ts";
import { inventedJob, withRecordedRoad } from "../support/inventedJob.ts";
import { openNotebook, startChromium } from "../support/openNotebook.ts";
import { storedLoads } from "../support/storedRecords.ts";

// What a person meets on the notebook itself when a file or the browser's database is amiss.

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());

// Fields of the answer screen: they are there as soon as the job is.
const load = "#answer-field-vehicle-load_kg";
const longest = "#answer-field-longestDay_km";
const complaint = (page: Page) => page.locator(".complaint");
const keeping = (page: Page) => page.locator(".keeping");
const saved = (page: Page) => keeping(page).getByText("Saved in this browser").waitFor();

async function opened(): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const notebook = await openNotebook(browser, 1440, 900, false, true);
  await notebook.page.waitForSelector(load);
  return notebook;
}

async function type(page: Page, field: string, text: string): Promise<void> {
  await page.fill(field, text);
  await page.locator(field).blur();
}

/** By its path, since the browser then reads it itself, however long it is. */
async function pick(page: Page, content: string | Buffer): Promise<void> {
  const path = join(emptyFolder(), "picked.json");
  writeFileSync(path, content);
  await page.setInputFiles("#job-file", path);
}

/** The notebook after `before` ran in the page ahead of everything else, in a profile of its own. */
async function openAfter(before: () => void): Promise<Page> {
  const context = await browser.newContext({ acceptDownloads: true });
  await context.addInitScript(before);
  const page = await context.newPage();
  await page.goto(inject("notebookUrl"));
  await page.waitForSelector(load);
  return page;
}

/** Saves the job by the button that the trouble itself offers, and returns what is in the file. */
async function savedAsFile(page: Page): Promise<{ vehicle: { load_kg: number } }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save it as a file now" }).click(),
  ]);
  return JSON.parse(await readFile(await download.path(), "utf8"));
}

describe("a bad job file", () => {
  const good = JSON.parse(jobText(inventedJob()));
  // One page for all of them: each finds the job as the one before left it.
  let page: Page;
  let faults: readonly string[];
  let load_kg = 155;
  beforeAll(async () => {
    ({ page, faults } = await opened());
  });
  afterAll(async () => page?.context().close());
  it.each([
    ["of one wrong key", JSON.stringify({ ...good, usualDay_kmh: 3 }), /usualDay_kmh/],
    ["that is cut off", jobText(inventedJob()).slice(0, 700), /JSON/],
    ["of bytes that are no text", Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0, 1]), /not text/],
    ["of 30 MB that is no job", JSON.stringify("x".repeat(30e6)), /job/],
    ["of more than is read", Buffer.alloc(65e6, 32), /found a file of 65\.0 MB, at most 64 MB allowed/],
  ])("%s is refused by one sentence, and the job on the page goes on", async (_, content, sentence) => {
    const title = await page.locator("h1").textContent();
    const words = async () => (await complaint(page).textContent())?.trim() ?? "";
    const before = await words();
    await pick(page, content);
    await expect.poll(words, { timeout: 60_000 }).not.toBe(before);
    expect(await words()).toMatch(sentence);
    expect((await words()).length).toBeLessThan(400);
    expect(await complaint(page).locator("p").count()).toBe(1);
    expect(await complaint(page).locator("li").count()).toBe(0);
    expect(await page.locator("h1").textContent()).toBe(title);
    load_kg += 1;
    await type(page, load, `${load_kg} kg`);
    await expect.poll(() => storedLoads(page)).toEqual([load_kg]);
    expect(faults).toEqual([]);
  });

  it("with several things wrong has each as an item of its own: where, what was found, what is allowed", async () => {
    const bad = { ...good, usualDay_km: -4, title: 7, vehicle: { ...good.vehicle, load_kg: "heavy" } };
    await pick(page, JSON.stringify(bad));
    await complaint(page).locator("li").first().waitFor();
    const items = await complaint(page).locator("li").allTextContents();
    expect(items.map((item) => item.split(":")[0]).sort()).toEqual(["title", "usualDay_km", "vehicle.load_kg"]);
    expect(items.find((item) => item.startsWith("usualDay_km"))).toMatch(/-4/);
  });

  it("of 30 MB that is a job opens", async () => {
    const road = withRecordedRoad(inventedJob(), 50_000).roads[1]!;
    const roads = Array.from({ length: 45 }, (_, i) => ({ ...road, id: `r${i}` }));
    const text = jobText({ ...inventedJob("A big one"), roads });
    expect(text.length).toBeGreaterThan(30e6);
    await pick(page, text);
    await page.locator("h1", { hasText: "A big one" }).waitFor({ timeout: 100_000 });
    await saved(page);
  });
});

describe("a browser whose database", () => {
  const troubles: readonly (readonly [string, () => void])[] = [
    ["is not there", () => Object.defineProperty(window, "indexedDB", { value: undefined })],
    [
      "may not be asked for",
      () =>
        Object.defineProperty(window, "indexedDB", {
          get: () => {
            throw new DOMException("denied", "SecurityError");
          },
        }),
    ],
    [
      "throws when it is opened",
      () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException("denied", "SecurityError");
        };
      },
    ],
    [
      "fails to open",
      () => {
        const real = IDBFactory.prototype.open;
        // A version below the one there is: the browser refuses it after a moment, by an event.
        IDBFactory.prototype.open = function (name) {
          real.call(this, name, 9).onsuccess = (event) => (event.target as IDBOpenDBRequest).result.close();
          return real.call(this, name, 8);
        };
      },
    ],
  ];
  it.each(troubles)("%s says that nothing is kept once the tab closes, and offers a file", async (_, before) => {
    const page = await openAfter(before);
    expect(await keeping(page).textContent()).toMatch(/Held in this page only/);
    expect(await keeping(page).textContent()).toMatch(/live in this page until it is closed/);
    await type(page, load, "211 kg");
    expect((await savedAsFile(page)).vehicle.load_kg).toBe(211);
    await page.context().close();
  });

  it("holds records of another shape opens what can be read, says how many cannot, and gives what is in those", async () => {
    const { page } = await opened();
    await type(page, load, "188 kg");
    await saved(page);
    await page.evaluate(async () => {
      const open = await new Promise<IDBDatabase>((resolve) => {
        const asked = indexedDB.open("bellhousing");
        asked.onsuccess = () => resolve(asked.result);
      });
      const tx = open.transaction(["heads", "bodies"], "readwrite");
      const heads = tx.objectStore("heads");
      const asked = heads.getAll();
      asked.onsuccess = () => {
        heads.put({ id: "odd", what: "another shape" });
        // A head that can be read over a job that cannot, and newer than the good one, so that it is tried first.
        heads.put({ ...asked.result[0], id: "hollow", title: "Hollow", changedAt_ms: Date.now() + 60_000 });
        tx.objectStore("bodies").put({ id: "hollow", frame: { format: "something else" } });
      };
      await new Promise((resolve) => {
        tx.oncomplete = resolve;
      });
      open.close();
    });
    await page.reload();
    await page.waitForSelector(load);
    expect(await page.inputValue(load)).toMatch(/^188/);
    await page.locator(".jobs > summary").click();
    expect(await page.locator(".jobs-body").textContent()).toContain("One record in it cannot be read");
    await page.getByRole("button", { name: "Open Hollow" }).click();
    await complaint(page).locator("p").first().waitFor();
    expect(await complaint(page).textContent()).toContain("Hollow");
    // What no reader takes can be looked at as it is stored, and taken along as a file.
    expect(await page.locator(".stored-text pre").textContent()).toContain('"something else"');
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as a file Hollow" }).click(),
    ]);
    expect(await readFile(await download.path(), "utf8")).toContain('"something else"');
    expect(await page.inputValue(load)).toMatch(/^188/);
    await page.context().close();
  });
});

describe("a browser that has no room left", () => {
  it("says so at the word being typed, offers a file, and stores all of it once there is room", async () => {
    const { page, faults } = await opened();
    await saved(page);
    await page.evaluate(() => {
      const real = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
      Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put: real }) });
    });
    await page.locator(load).selectText();
    await page.keyboard.type("233 kg");
    await keeping(page).getByText("Not saved: the browser has no room left.").waitFor();
    expect(await page.inputValue(load)).toBe("233 kg");
    expect((await savedAsFile(page)).vehicle.load_kg).toBe(233);
    await page.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
    await type(page, longest, "52 km");
    await saved(page);
    await page.reload();
    await page.waitForSelector(load);
    expect(await page.inputValue(load)).toMatch(/^233/);
    expect(await page.inputValue(longest)).toMatch(/^52/);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
