import { describe, expect, it } from "vitest";
import type { JobStore } from "../../../web/store/database/jobStore.ts";
import { StoreRefusal } from "../../../web/store/database/storeRefusal.ts";
import { openJobs } from "../../../web/store/jobs.ts";
import { halfTyped, inventedJob } from "../../support/inventedJob.ts";
import { guardedStore } from "../../support/inventedWorld.ts";
import { onePage } from "./storedJobs.ts";

describe("closing the page", () => {
  it("asks where edits are in no store and in no file, and not where they are stored", async () => {
    const between = (store: JobStore): JobStore => ({ ...store, kind: "database" });
    const { browser, page, jobs } = await onePage({ between });
    await jobs.create(inventedJob(), "the demo");
    jobs.commit(inventedJob("Saloon", 160), "load");
    expect(page.asksBeforeClosing()).toBe(false); // the journal is written at every key
    await browser.pass(1000);
    expect(page.asksBeforeClosing()).toBe(false);
  });

  it("asks while the store is full, until there is a file", async () => {
    let isFull = false;
    const { browser, page, jobs } = await onePage({
      between: (store) =>
        guardedStore(store, async (_, call) => {
          if (isFull) throw new StoreRefusal("full", "no room left");
          return call();
        }),
    });
    await jobs.create(inventedJob(), "the demo");
    isFull = true;
    jobs.commit(inventedJob("Saloon", 160), "load");
    await browser.pass(1000);
    expect(page.asksBeforeClosing()).toBe(true);
    jobs.commit(inventedJob("Saloon", 161), "load");
    expect(page.asksBeforeClosing()).toBe(true); // at once, before the store has refused this one as well
    await jobs.exportFile();
    expect(page.asksBeforeClosing()).toBe(false);
    jobs.commit(inventedJob("Saloon", 162), "load");
    await browser.pass(1000);
    expect(page.asksBeforeClosing()).toBe(true);
  });

  it("asks where there is no database, for a job left behind and for half a word too", async () => {
    const openStore = () => Promise.reject(new Error("private window"));
    const { browser, page, jobs } = await onePage({ openStore });
    const id = await jobs.create(inventedJob("First"), "the demo");
    expect(page.asksBeforeClosing()).toBe(false);
    jobs.saveDraft("title", halfTyped("Sal"));
    expect(page.asksBeforeClosing()).toBe(true);
    jobs.commit(inventedJob("First", 160), "load", ["title"]);
    await browser.pass(1000);
    await jobs.create(inventedJob("Second"), "the demo");
    expect(page.asksBeforeClosing()).toBe(true);
    await jobs.exportFile(id);
    expect(page.asksBeforeClosing()).toBe(false);
  });
});

describe("saving as typed", () => {
  it("stores a new job at once and says so", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo saloon");
    expect(jobs.status.value.kind).toBe("saved");
    const again = await openJobs(browser.page().world);
    expect(again.list.value.map((head) => head.id)).toEqual([id]);
    expect(await again.open(id)).toEqual(inventedJob());
    expect(again.list.value[0]?.version.reason).toBe("made from the demo saloon");
  });

  it("stores an edit by itself after a moment, and many in a row within a second and a half", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    for (let load_kg = 151; load_kg <= 170; load_kg++) {
      jobs.commit(inventedJob("Invented saloon", load_kg), `load to ${load_kg} kg`);
      await browser.pass(80);
    }
    const seen = browser.shelves.jobs.get(id)?.head.editCount ?? 0;
    expect(seen).toBeGreaterThan(5);
    await browser.pass(1000);
    expect(jobs.status.value.kind).toBe("saved");
    expect(browser.shelves.jobs.get(id)?.head).toMatchObject({ editCount: 20, version: { reason: "load to 170 kg" } });
  });

  it("brings back half a word after the page was closed in the middle of it", async () => {
    const { browser, page, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("vehicle.load_kg", halfTyped("14 1/4 cw"));
    page.die();
    const again = await openJobs(browser.page().world);
    await again.open(id);
    expect(again.current.value?.drafts).toEqual({ "vehicle.load_kg": halfTyped("14 1/4 cw") });
    expect(again.recovered).toMatchObject([{ id, isCopy: false }]);
  });

  it("stores what is unsaved when the page is hidden, without waiting", async () => {
    const { browser, page, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("title", halfTyped("Sal"));
    page.hide();
    await browser.pass(0);
    expect(browser.shelves.jobs.get(id)?.drafts).toEqual({ title: halfTyped("Sal") });
  });

  it("drops a draft that an edit has settled", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("vehicle.load_kg", halfTyped("200"));
    jobs.saveDraft("title", halfTyped("Sal"));
    jobs.commit(inventedJob("Invented saloon", 200), "load", ["vehicle.load_kg"]);
    jobs.dropDraft("title");
    await browser.pass(1000);
    expect(browser.shelves.jobs.get(id)?.drafts).toEqual({});
  });

  it("brings back a word typed into a job that was opened a second time in one session", async () => {
    const { browser, page, jobs } = await onePage();
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    for (let load_kg = 151; load_kg < 160; load_kg++) jobs.commit(inventedJob("Saloon", load_kg), "load");
    await browser.pass(2000);
    await jobs.create(inventedJob("Other"), "the demo");
    await jobs.open(id);
    jobs.saveDraft("title", halfTyped("Sal"));
    page.die();
    const again = await openJobs(browser.page().world);
    await again.open(id);
    expect(again.current.value?.drafts).toEqual({ title: halfTyped("Sal") });
  });

  it("leaves the journal of a page that is still open to that page", async () => {
    const { browser, jobs } = await onePage();
    await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("title", halfTyped("Sal"));
    const other = await openJobs(browser.page().world);
    expect(other.recovered).toEqual([]);
    expect(browser.shelves.journal.size).toBe(1);
  });

  it("brings edits back a moment later where the page that made them still counted as open", async () => {
    const { browser, page, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("title", halfTyped("Sal"));
    page.die();
    const lingering = [...browser.shelves.journal.values()][0]!.session;
    browser.live.add(lingering);
    const again = await openJobs(browser.page().world);
    await again.open(id);
    expect(again.current.value?.drafts).toEqual({});
    browser.live.delete(lingering);
    await browser.pass(2000);
    expect(again.current.value?.drafts).toEqual({ title: halfTyped("Sal") });
    expect(again.conflict.value).toBeUndefined();
  });

  it("takes a journal for a dead page's after a minute where the browser cannot tell which pages are open", async () => {
    const { browser, page, jobs } = await onePage();
    await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("title", halfTyped("Sal"));
    page.die();
    expect((await openJobs(browser.page({ canTellSessions: false }).world)).recovered).toEqual([]);
    await browser.pass(61_000);
    expect((await openJobs(browser.page({ canTellSessions: false }).world)).recovered).toHaveLength(1);
  });
});
