import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, it } from "vitest";
import { jobText } from "../../shared/job/jobText.ts";
import { KEPT_VERSIONS, PAUSE_ms } from "../../web/store/database/versionPolicy.ts";
import { inventedJob, withRecordedRoad } from "../support/inventedJob.ts";
import { openWorking, startChromium } from "../support/openNotebook.ts";
import { storedLoads, storedRecords } from "../support/storedRecords.ts";

// What the page leaves in the browser's database, and what it makes of what an older page left there.

declare global {
  interface Window {
    /** Lets time pass on the page's clock, which stands still otherwise. */
    pass(time_ms: number): void;
    /** Runs a change of records in one transaction over all stores of the database. */
    inStores(how: (store: (name: string) => IDBObjectStore) => void): Promise<void>;
  }
}

const load = "#answer-field-vehicle-load_kg";

let browser: Browser;
let context: BrowserContext;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => browser?.close());
beforeEach(async () => {
  context = await browser.newContext();
  await context.addInitScript(
    (start_ms) => {
      let passed_ms = 0;
      Date.now = () => start_ms + passed_ms;
      window.pass = (time_ms) => {
        passed_ms += time_ms;
      };
      window.inStores = async (how) => {
        const database = await new Promise<IDBDatabase>((resolve) => {
          const request = indexedDB.open("bellhousing");
          request.onsuccess = () => resolve(request.result);
        });
        const tx = database.transaction([...database.objectStoreNames], "readwrite");
        how((name) => tx.objectStore(name));
        await new Promise((resolve) => {
          tx.oncomplete = resolve;
        });
        database.close();
      };
    },
    Date.UTC(2026, 0, 5, 9),
  );
});
afterEach(async () => context?.close());

async function openTab(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(inject("notebookUrl"));
  await page.waitForSelector(load);
  return page;
}

async function type(page: Page, load_kg: number): Promise<void> {
  await page.fill(load, `${load_kg} kg`);
  await page.locator(load).blur();
  await expect.poll(() => storedLoads(page)).toContain(load_kg);
  await page.locator(".keeping", { hasText: "Saved in this browser" }).waitFor();
}

/** Keys of one job's records in a store that has them under `[job, …]`. */
const keysOf = async (page: Page, store: string, id: string) =>
  ((await storedRecords(page)).keys[store] ?? []).filter(([jobId]) => jobId === id);

it("has the newest versions of a job, and of its recorded roads those that a version still needs", async () => {
  const page = await openTab();
  const buffer = Buffer.from(jobText(withRecordedRoad(inventedJob("With a log", 150), 300)));
  await page.setInputFiles("#job-file", { name: "log.json", mimeType: "application/json", buffer });
  await page.locator("h1", { hasText: "With a log" }).waitFor();
  await expect.poll(() => storedLoads(page)).toContain(150);
  const id = (await storedRecords(page)).heads.find(({ title }) => title === "With a log")?.id ?? "";
  const roads = await keysOf(page, "lists", id);
  expect(roads.length).toBeGreaterThan(0);

  await openWorking(page, "theRoad");
  await page.selectOption("#answer-road", "usual");
  await page.evaluate((rest_ms) => window.pass(rest_ms), PAUSE_ms);
  await page.getByRole("button", { name: /out of the job$/ }).click();
  await type(page, 151);
  expect(await keysOf(page, "lists", id)).toEqual(roads); // the version with the road is there to go back to
  const [first] = (await storedRecords(page)).versions;
  expect(first?.head.number).toBe(1);

  // As many more as are kept, put there by hand, then one by an edit: the version with the road is one too many.
  await page.evaluate(
    async ([jobId, count]) => {
      await window.inStores((store) => {
        const asked = store("heads").get(jobId);
        asked.onsuccess = () => {
          const head = asked.result;
          const body = store("bodies").get(jobId);
          body.onsuccess = () => {
            const { frame } = body.result;
            for (let number = 2; number < 2 + count; number++)
              store("versions").put({ jobId, number, head: { ...head.version, number }, frame });
            store("heads").put({ ...head, version: { ...head.version, number: 2 + count } });
          };
        };
      });
    },
    [id, KEPT_VERSIONS] as const,
  );
  await page.evaluate((rest_ms) => window.pass(rest_ms), PAUSE_ms);
  await type(page, 152);
  const numbers = (await storedRecords(page)).versions.map(({ head }) => head.number);
  expect(numbers).toEqual(Array.from({ length: KEPT_VERSIONS }, (_, i) => i + 3));
  expect(await keysOf(page, "lists", id)).toEqual([]);
});

it("has nothing left of a job that was deleted long ago, and all of the others", async () => {
  const page = await openTab();
  await page.locator(".jobs > summary").click();
  await page.getByRole("button", { name: /^Copy/ }).first().click();
  await page.locator("h1", { hasText: "(copy)" }).waitFor();
  await page.evaluate((rest_ms) => window.pass(rest_ms), PAUSE_ms);
  await type(page, 99);
  const { heads } = await storedRecords(page);
  const [copy, original] = [true, false].map((isCopy) =>
    heads.find(({ title }) => title.endsWith("(copy)") === isCopy),
  );
  await page.evaluate(
    (ids) =>
      window.inStores((store) => {
        for (const id of ids) {
          store("tracks").put({ latitude_deg: [51], longitude_deg: [0] }, [id, "usual"]);
          store("lists").put(new Float64Array(3), [id, "of no version"]);
          store("handles").put("a file", id);
        }
      }),
    [copy?.id ?? "", original?.id ?? ""],
  );
  await page.getByRole("button", { name: /^Delete .*\(copy\)$/ }).click();
  await expect
    .poll(async () => (await storedRecords(page)).heads.map(({ shelf }) => shelf).sort())
    .toEqual(["open", "removed"]);
  await page.evaluate(
    (id) =>
      window.inStores((store) => {
        const asked = store("heads").get(id);
        asked.onsuccess = () => store("heads").put({ ...asked.result, removedAt_ms: 0, openingsSince: 30 });
      }),
    copy?.id ?? "",
  );
  await page.reload();
  await page.waitForSelector(load);
  await expect.poll(async () => (await storedRecords(page)).heads.map(({ id }) => id)).toEqual([original?.id]);
  const left = Object.entries((await storedRecords(page)).keys).filter(([store]) => store !== "journal");
  for (const [store, keys] of left) {
    const jobs = keys.map((key) => (typeof key === "string" ? key : key[0]));
    expect([...new Set(jobs)], store).toEqual(store === "versions" ? [] : [original?.id]);
  }
});

it("of an older edition of the page is taken over whole, what a page that died had not saved included", async () => {
  const page = await openTab();
  await type(page, 175);
  await page.close();
  const bare = await context.newPage();
  await bare.goto(`${inject("notebookUrl")}nothing`);
  // The first edition kept the journal under another name.
  await bare.evaluate(async () => {
    const open = (version?: number) =>
      new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open("bellhousing", version);
        request.onupgradeneeded = () => {
          for (const [name, keyPath] of stores)
            request.result.createObjectStore(
              name === "journal" ? "lastWords" : name,
              keyPath === null ? {} : { keyPath },
            );
        };
        request.onsuccess = () => resolve(request.result);
      });
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve) => {
        request.onsuccess = () => resolve(request.result);
      });
    const stores: [string, string | string[] | null][] = [];
    const now = await open();
    const records: [string, unknown[]][] = [];
    for (const name of now.objectStoreNames) {
      const store = now.transaction(name).objectStore(name);
      stores.push([name, store.keyPath as string | string[] | null]);
      if (store.keyPath !== null && name !== "journal") records.push([name, await answer(store.getAll())]);
    }
    now.close();
    await answer(indexedDB.deleteDatabase("bellhousing"));
    const older = await open(1);
    const tx = older.transaction([...older.objectStoreNames], "readwrite");
    for (const [name, all] of records) for (const each of all) tx.objectStore(name).put(each);
    const [head] = (records.find(([name]) => name === "heads")?.[1] ?? []) as { id: string; revision: number }[];
    const drafts = { "vehicle.load_kg": { typed: "a quarter of a t", problem: "found no number" } };
    const journal = { jobId: head?.id, session: "gone", step: 9, base: head?.revision, at_ms: Date.now(), drafts };
    tx.objectStore("lastWords").put(journal);
    await new Promise((resolve) => {
      tx.oncomplete = resolve;
    });
    older.close();
  });
  const again = await openTab();
  expect(await again.inputValue(load)).toBe("a quarter of a t");
  expect(await storedLoads(again)).toEqual([175]);
  expect(Object.keys((await storedRecords(again)).keys)).toContain("journal");
  await expect.poll(async () => (await storedRecords(again)).keys["journal"]).toEqual([]);
});
