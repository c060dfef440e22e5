import { describe, expect, it } from "vitest";
import { InputError } from "../../../shared/problems.ts";
import type { JobStore } from "../../../web/store/database/jobStore.ts";
import { StoreRefusal } from "../../../web/store/database/storeRefusal.ts";
import { PAUSE_ms } from "../../../web/store/database/versionPolicy.ts";
import type { FileLike } from "../../../web/store/files/readJobFile.ts";
import { REMOVED_KEPT_OPENINGS } from "../../../web/store/jobShelf.ts";
import { openJobs } from "../../../web/store/jobs.ts";
import { halfTyped, inventedJob, withRecordedRoad } from "../../support/inventedJob.ts";
import { guardedStore, inventedBrowser, type PageOptions } from "../../support/inventedWorld.ts";

const DAY_ms = 86_400_000;

function file(text: string, name = "job.bellhousing.json"): FileLike & { lastModified: number } {
  const bytes = new TextEncoder().encode(text);
  return { name, size: bytes.length, lastModified: 1, arrayBuffer: async () => bytes.buffer };
}

async function onePage(options: PageOptions = {}) {
  const browser = inventedBrowser();
  const page = browser.page(options);
  const jobs = await openJobs(page.world);
  return { browser, page, jobs };
}

async function twoPagesOnOneJob() {
  const { browser, page, jobs } = await onePage();
  const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
  const otherPage = browser.page();
  const other = await openJobs(otherPage.world);
  await other.open(id);
  await browser.pass(3000); // both have looked for the journals of dead pages
  return { browser, id, page, jobs, otherPage, other };
}

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

describe("a store that refuses", () => {
  function refusing(how: { error?: Error; methods: readonly string[] }): PageOptions {
    return {
      between: (store) =>
        guardedStore(store, (method, call) =>
          how.error && how.methods.includes(method) ? Promise.reject(how.error) : call(),
        ),
    };
  }

  it("is said at once when it is full, the job can still be saved as a file, and it is tried again", async () => {
    const how: { error?: Error; methods: string[] } = { methods: ["write", "writeJournal", "amend"] };
    const { browser, jobs } = await onePage(refusing(how));
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    how.error = new DOMException("no room", "QuotaExceededError");
    jobs.commit(inventedJob("Saloon", 175), "load");
    await browser.pass(0);
    expect(jobs.status.value).toMatchObject({ kind: "refused", reason: "full" });
    const { text } = await jobs.exportFile();
    expect(JSON.parse(text)).toEqual(inventedJob("Saloon", 175));
    expect(browser.downloads).toHaveLength(1);
    delete how.error;
    await browser.pass(11_000);
    expect(jobs.status.value.kind).toBe("saved");
    expect(browser.shelves.jobs.get(id)?.frame).toMatchObject({ vehicle: { load_kg: 175 } });
  });

  it("keeps a new job in the page when it cannot be stored at all", async () => {
    const how = { error: new StoreRefusal("failed", "no"), methods: ["add", "write", "writeJournal", "amend"] };
    const { jobs } = await onePage(refusing(how));
    await jobs.create(inventedJob(), "the demo");
    expect(jobs.status.value).toMatchObject({ kind: "refused", reason: "failed" });
    expect(JSON.parse((await jobs.exportFile()).text)).toEqual(inventedJob());
  });

  it("does not let the job be left with edits that it would lose, until they are in a file", async () => {
    const how: { error?: Error; methods: string[] } = { methods: ["write", "writeJournal"] };
    const { browser, jobs } = await onePage(refusing(how));
    const other = await jobs.create(inventedJob("Other"), "the demo");
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    how.error = new DOMException("no room", "QuotaExceededError");
    jobs.commit(inventedJob("Saloon", 175), "load");
    await browser.pass(500);
    await expect(jobs.open(other)).rejects.toThrow("save this job as a file before you leave it");
    await expect(jobs.create(inventedJob("Third"), "the demo")).rejects.toThrow("save this job as a file");
    expect(jobs.current.value?.id).toBe(id);
    await jobs.exportFile();
    await jobs.open(other);
    expect(jobs.current.value?.id).toBe(other);
  });

  it("leaves the job open when it refuses to delete it", async () => {
    const how = { error: new StoreRefusal("failed", "no"), methods: ["amend"] };
    const { jobs } = await onePage(refusing(how));
    const id = await jobs.create(inventedJob(), "the demo");
    await expect(jobs.remove(id)).rejects.toThrow(StoreRefusal);
    expect(jobs.current.value?.id).toBe(id);
  });

  it.each(["frame", "drafts"] as const)("is found out when it stores another %s than it was given", async (what) => {
    let isLying = false;
    const { browser, jobs } = await onePage({
      between: (store) =>
        guardedStore(store, async (method, call) => {
          const found = await call();
          if (!isLying || method !== "read" || typeof found !== "object" || found === null) return found;
          const stored = found as { job: { frame: object }; drafts: object };
          if (what === "drafts") return { ...stored, drafts: {} };
          return { ...stored, job: { ...stored.job, frame: { ...stored.job.frame, usualDay_km: 41 } } };
        }),
    });
    await jobs.create(inventedJob(), "the demo");
    isLying = true;
    jobs.saveDraft("title", halfTyped("S"));
    jobs.commit(inventedJob("Saloon"), "title");
    await browser.pass(2000);
    expect(jobs.status.value).toMatchObject({ kind: "refused", reason: "differs" });
    isLying = false;
    await browser.pass(11_000);
    expect(jobs.status.value.kind).toBe("saved");
  });

  it("builds on its own write when only the answer was lost", async () => {
    let isLosing = false;
    const { browser, jobs } = await onePage({
      between: (store) =>
        guardedStore(store, async (method, call) => {
          const answer = await call();
          if (isLosing && method === "write") {
            isLosing = false;
            throw new StoreRefusal("failed", "connection lost");
          }
          return answer;
        }),
    });
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    isLosing = true;
    jobs.commit(inventedJob("Saloon", 175), "load");
    await browser.pass(400);
    expect(jobs.status.value.kind).toBe("refused");
    jobs.commit(inventedJob("Saloon", 180), "load again");
    await browser.pass(1000);
    expect(jobs.conflict.value).toBeUndefined();
    expect(jobs.status.value.kind).toBe("saved");
    expect(browser.shelves.jobs.get(id)?.frame).toMatchObject({ vehicle: { load_kg: 180 } });
  });

  it("works in memory and says why when there is no database", async () => {
    const { jobs } = await onePage({
      openStore: () => Promise.reject(new StoreRefusal("failed", "this browser has no database")),
    });
    expect(jobs.place.value).toMatchObject({ kind: "memory", why: "this browser has no database" });
    const id = await jobs.create(inventedJob(), "the demo");
    expect(await jobs.open(id)).toEqual(inventedJob());
    expect(jobs.canLinkFile).toBe(false);
  });

  it("puts the open job there again when the data were cleared under it", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(withRecordedRoad(inventedJob("Saloon"), 300), "the demo");
    browser.shelves.jobs.clear();
    jobs.commit(withRecordedRoad(inventedJob("Saloon", 200), 300), "load");
    await browser.pass(1000);
    expect(jobs.news.value).toContain("cleared");
    expect(jobs.status.value.kind).toBe("saved");
    const again = await openJobs(browser.page().world);
    expect(await again.open(id)).toEqual(withRecordedRoad(inventedJob("Saloon", 200), 300));
  });
});

describe("two tabs on one job", () => {
  it("shows an edit of one in the other, which has nothing unsaved", async () => {
    const { browser, jobs, other } = await twoPagesOnOneJob();
    const before = other.current.value!.arrival;
    jobs.commit(inventedJob("Saloon", 175), "load");
    await browser.pass(1000);
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 175));
    expect(other.current.value!.arrival).toBeGreaterThan(before);
    expect(other.news.value).toContain("Another tab");
    expect(other.conflict.value).toBeUndefined();
  });

  it("never lets the later tab overwrite the earlier: its state becomes a copy and it is asked", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    jobs.commit(inventedJob("Saloon", 175), "mine");
    other.commit(inventedJob("Saloon", 300), "theirs");
    await browser.pass(2000);
    const asked = [jobs, other].filter((each) => each.conflict.value !== undefined);
    expect(asked).toHaveLength(1);
    const loser = asked[0]!;
    const { copyId, kind } = loser.conflict.value!;
    expect(kind).toBe("changed");
    expect(loser.current.value?.id).toBe(copyId);
    const again = await openJobs(browser.page().world);
    const kept = [await again.open(id), await again.open(copyId)].map((job) => job.vehicle.load_kg);
    expect(kept.sort()).toEqual([175, 300]);
    expect(browser.shelves.journal.size).toBe(0);
  });

  it("goes on with the copy when mine is kept", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    jobs.commit(inventedJob("Saloon", 175), "first");
    other.commit(inventedJob("Saloon", 300), "second");
    await browser.pass(2000);
    const { copyId } = other.conflict.value!;
    other.keepMine();
    other.commit(inventedJob("Saloon", 310), "third");
    await browser.pass(1000);
    expect(other.conflict.value).toBeUndefined();
    expect(await other.open(copyId)).toEqual(inventedJob("Saloon", 310));
    expect(await other.open(id)).toEqual(inventedJob("Saloon", 175));
  });

  it("opens theirs when theirs is taken, and what was typed here can still be brought back", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    jobs.commit(inventedJob("Saloon", 175), "first");
    other.commit(inventedJob("Saloon", 300), "second");
    await browser.pass(2000);
    const { copyId } = other.conflict.value!;
    await other.takeTheirs();
    expect(other.conflict.value).toBeUndefined();
    expect(other.current.value).toMatchObject({ id, job: inventedJob("Saloon", 175) });
    expect(other.list.value.find((head) => head.id === copyId)?.shelf).toBe("removed");
    expect(await other.undoRemove()).toBe(copyId);
    expect(await other.open(copyId)).toEqual(inventedJob("Saloon", 300));
  });

  it("does not let a tab that slept write its old state over a newer one", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    jobs.commit(inventedJob("Saloon", 175), "while the other slept");
    await browser.pass(2000);
    // It wakes by a keystroke, before it hears or sees anything.
    other.commit(inventedJob("Saloon", 150), "an old state");
    otherPage.show();
    await browser.pass(2000);
    expect(other.conflict.value?.theirs.version.reason).toBe("while the other slept");
    expect(await jobs.readVersion(id, jobs.list.value.find((head) => head.id === id)!.version.number)).toEqual(
      inventedJob("Saloon", 175),
    );
  });

  it("catches up when it wakes with nothing unsaved", async () => {
    const { browser, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    jobs.commit(inventedJob("Saloon", 175), "while the other slept");
    await browser.pass(2000);
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 150));
    otherPage.show();
    await browser.pass(0);
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 175));
  });

  it("leaves a job that the other tab deleted, and says it can be brought back", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    await jobs.remove(id);
    await browser.pass(0);
    expect(other.current.value).toBeUndefined();
    expect(other.news.value).toContain("brought back");
  });

  it("makes a job of its own of what is typed on after the other tab deleted the job", async () => {
    const { browser, id, jobs, other } = await twoPagesOnOneJob();
    await jobs.remove(id);
    await browser.pass(0);
    other.saveDraft("title", halfTyped("Sal"));
    await browser.pass(1000);
    expect(other.current.value?.id).not.toBe(id);
    const again = await openJobs(browser.page().world);
    await again.open(other.current.value!.id);
    expect(again.current.value).toMatchObject({ job: inventedJob("Saloon", 150), drafts: { title: halfTyped("Sal") } });
    expect(again.list.value.find((head) => head.id === id)?.shelf).toBe("removed");
  });

  it("keeps unsaved edits of a job that the other tab deleted as a copy", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    await jobs.remove(id);
    other.commit(inventedJob("Saloon", 300), "unaware");
    otherPage.show();
    await browser.pass(2000);
    expect(other.conflict.value?.kind).toBe("removed");
    expect(other.current.value?.job).toEqual(inventedJob("Saloon", 300));
    await other.takeTheirs();
    expect(other.current.value).toBeUndefined();
  });

  it("makes a copy of what a dead tab had not saved when the job moved on without it", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    other.commit(inventedJob("Saloon", 300), "never saved");
    otherPage.die();
    jobs.commit(inventedJob("Saloon", 175), "moved on");
    await browser.pass(2000);
    const again = await openJobs(browser.page().world);
    expect(again.recovered).toMatchObject([{ isCopy: true }]);
    expect(again.news.value).toContain("brought back as a job of their own");
    expect(await again.open(again.recovered[0]!.id)).toEqual(inventedJob("Saloon", 300));
    expect(await again.open(id)).toEqual(inventedJob("Saloon", 175));
  });
});

describe("two tabs that open at once after a third died", () => {
  it("bring its edits back once: into the job", async () => {
    const { browser, page, jobs } = await onePage();
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    jobs.commit(inventedJob("Saloon", 175), "never saved");
    page.die();
    const both = await Promise.all([openJobs(browser.page().world), openJobs(browser.page().world)]);
    expect(both.flatMap(({ recovered }) => recovered)).toHaveLength(1);
    expect(browser.shelves.jobs.size).toBe(1);
    expect(browser.shelves.journal.size).toBe(0);
    expect(await both[0].open(id)).toEqual(inventedJob("Saloon", 175));
  });

  it("bring its edits back once: into one copy", async () => {
    const { browser, id, jobs, otherPage, other } = await twoPagesOnOneJob();
    otherPage.sleep();
    other.commit(inventedJob("Saloon", 300), "never saved");
    otherPage.die();
    jobs.commit(inventedJob("Saloon", 175), "moved on");
    await browser.pass(2000);
    const both = await Promise.all([openJobs(browser.page().world), openJobs(browser.page().world)]);
    expect(both.flatMap(({ recovered }) => recovered)).toHaveLength(1);
    expect(both.map(({ status }) => status.value.kind)).toEqual(["idle", "idle"]);
    expect([...browser.shelves.jobs.keys()]).toHaveLength(2);
    expect(browser.shelves.journal.size).toBe(0);
    expect(await jobs.open(id)).toEqual(inventedJob("Saloon", 175));
  });
});

describe("the list of jobs", () => {
  it("shows the newest first with a line each", async () => {
    const { browser, jobs } = await onePage();
    await jobs.create(inventedJob("First"), "the demo");
    await browser.pass(1000);
    await jobs.create(inventedJob("Second"), "the demo");
    expect(jobs.list.value.map(({ title }) => title)).toEqual(["Second", "First"]);
    expect(jobs.list.value[0]?.line).toBe("Saloon of about 1960 · 40 km a day · 2 packs · 1 road · invented");
  });

  it("duplicates a job with its drafts and positions under a title of its own", async () => {
    const { browser, jobs } = await onePage();
    const job = withRecordedRoad(inventedJob("Saloon"), 300);
    const id = await jobs.create(job, "the demo");
    const track = { latitude_deg: Float64Array.of(51), longitude_deg: Float64Array.of(0) };
    await jobs.putTrack("usual", track);
    jobs.saveDraft("title", halfTyped("Sal"));
    const copyId = await jobs.duplicate(id);
    expect(jobs.current.value).toMatchObject({ id: copyId, job: { ...job, title: "Saloon (copy)" } }); // what is typed next is the copy's
    expect(jobs.current.value?.drafts).toEqual({ title: halfTyped("Sal") });
    expect(await jobs.readTrack("usual")).toEqual(track);
    jobs.commit({ ...job, title: "Changed" }, "title");
    await browser.pass(1000);
    expect(await jobs.open(id)).toEqual(job);
  });

  it("archives and brings back without a new version", async () => {
    const { jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    await jobs.archive(id);
    expect(jobs.list.value[0]?.shelf).toBe("archived");
    await jobs.unarchive(id);
    expect(jobs.list.value[0]?.shelf).toBe("open");
    expect(await jobs.versions(id)).toHaveLength(1);
  });

  it("deletes with undo, the last typed word included", async () => {
    const { jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("title", halfTyped("Sal"));
    await jobs.remove(id);
    expect(jobs.current.value).toBeUndefined();
    expect(jobs.list.value[0]?.shelf).toBe("removed");
    expect(await jobs.undoRemove()).toBe(id);
    await jobs.open(id);
    expect(jobs.current.value?.drafts).toEqual({ title: halfTyped("Sal") });
    expect(await jobs.undoRemove()).toBeUndefined();
  });

  it("erases a deleted job after thirty days and thirty openings, and no sooner", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    await jobs.remove(id);
    const listed = async () => (await openJobs(browser.page().world)).list.value.map((head) => head.id);
    for (let i = 0; i < REMOVED_KEPT_OPENINGS; i++) expect(await listed()).toEqual([id]);
    await browser.pass(29 * DAY_ms);
    expect(await listed()).toEqual([id]);
    await browser.pass(2 * DAY_ms);
    expect(await listed()).toEqual([]);
  });

  it("keeps a job that was deleted while the clock stood far back, and counts anew when it is deleted again", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    await jobs.remove(id);
    await browser.pass(3 * 365 * DAY_ms); // the clock is set right
    const again = await openJobs(browser.page().world);
    expect(again.list.value.map((head) => head.id)).toEqual([id]);
    await again.undoRemove(id);
    expect(again.list.value[0]).not.toHaveProperty("openingsSince");
    await again.remove(id);
    expect(again.list.value[0]?.openingsSince).toBe(0);
  });

  it("says every problem of a stored job that cannot be read, lets it be saved as it is, and leaves the open job", async () => {
    const { browser, jobs } = await onePage();
    const spoiled = await jobs.create(inventedJob("Spoiled"), "the demo");
    const id = await jobs.create(inventedJob("Whole"), "the demo");
    browser.shelves.jobs.get(spoiled)!.frame = { ...inventedJob("Spoiled"), usualDay_km: -1, colour: "green" };
    const error = await jobs.open(spoiled).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).problems.map(({ where }) => where).sort()).toEqual(["colour", "usualDay_km"]);
    expect(jobs.current.value?.id).toBe(id);
    expect(JSON.parse((await jobs.exportFile(spoiled)).text)).toMatchObject({ usualDay_km: -1, colour: "green" });
    expect(JSON.parse(await jobs.readText(spoiled))).toMatchObject({ usualDay_km: -1, colour: "green" });
  });

  it("gives the text of a job that lacks one of its long lists", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(withRecordedRoad(inventedJob("Torn"), 400), "the demo");
    await jobs.create(inventedJob("Whole"), "the demo");
    browser.shelves.jobs.get(id)!.lists.clear();
    await expect(jobs.open(id)).rejects.toThrow("missing");
    expect(JSON.parse(await jobs.readText(id))).toMatchObject({ title: "Torn", usualDay_km: 40 });
  });
});

describe("versions", () => {
  it("lists the present and the past with their reasons, and gives each back", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    await browser.pass(PAUSE_ms);
    jobs.commit(inventedJob("Saloon", 160), "load to 160 kg");
    await browser.pass(1000);
    jobs.commit(inventedJob("Saloon", 170), "load to 170 kg");
    const versions = await jobs.versions(id);
    expect(versions.map(({ reason, isPresent }) => [reason, isPresent])).toEqual([
      ["load to 170 kg", true],
      ["made from the demo", false],
    ]);
    expect(await jobs.readVersion(id, 1)).toEqual(inventedJob("Saloon", 150));
    expect(await jobs.readVersion(id, 2)).toEqual(inventedJob("Saloon", 170));
  });

  it("makes none by loading the page, however often, with an edit after each or without", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    await browser.pass(PAUSE_ms);
    jobs.commit(inventedJob("Saloon", 160), "load to 160 kg");
    await browser.pass(1000);
    for (let i = 0; i < 22; i++) {
      const again = await openJobs(browser.page().world);
      await again.open(id);
      again.commit(inventedJob("Saloon", 170 + i), "load");
      await browser.pass(1000);
      again.close();
    }
    const [, first, ...others] = await jobs.versions(id);
    expect(first?.reason).toBe("made from the demo");
    expect(others).toEqual([]);
  });

  it("restores a version as the newest state and keeps the one it replaces", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    await browser.pass(PAUSE_ms);
    jobs.commit(inventedJob("Saloon", 170), "load to 170 kg");
    jobs.saveDraft("title", halfTyped("Sal"));
    const before = jobs.current.value!.arrival;
    await jobs.restore(id, 1);
    expect(jobs.current.value).toMatchObject({ job: inventedJob("Saloon", 150), drafts: {} });
    expect(jobs.current.value!.arrival).toBeGreaterThan(before);
    const versions = await jobs.versions(id);
    expect(versions.map(({ reason }) => reason)).toEqual([
      "back to version 1: made from the demo",
      "load to 170 kg",
      "made from the demo",
    ]);
    expect(await jobs.readVersion(id, 2)).toEqual(inventedJob("Saloon", 170));
  });

  it("goes on in the restored version with an edit made while the restore is on its way", async () => {
    const gate: { held?: Promise<void>; open(): void } = { open() {} };
    const { browser, jobs } = await onePage({
      between: (store) =>
        guardedStore(store, async (method, call) => {
          if (method === "write") await gate.held;
          return call();
        }),
    });
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    await browser.pass(PAUSE_ms);
    jobs.commit(inventedJob("Saloon", 170), "load to 170 kg");
    await browser.pass(1000);
    gate.held = new Promise((resolve) => {
      gate.open = resolve;
    });
    const restored = jobs.restore(id, 1);
    await browser.pass(0);
    jobs.commit(inventedJob("Saloon", 155), "load to 155 kg");
    gate.open();
    await restored;
    await browser.pass(1000);
    expect((await jobs.versions(id)).map(({ reason }) => reason)).toEqual([
      "load to 155 kg",
      "load to 170 kg",
      "made from the demo",
    ]);
    expect(await jobs.readVersion(id, 3)).toEqual(inventedJob("Saloon", 155));
  });

  it("compares two versions and two jobs by path", async () => {
    const { browser, jobs } = await onePage();
    const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
    await browser.pass(PAUSE_ms);
    jobs.commit(inventedJob("Saloon", 170), "load to 170 kg");
    await browser.pass(1000);
    const load = { kind: "changed", path: "vehicle.load_kg", before: 150, after: 170 };
    expect(await jobs.compare({ id, version: 1 }, { id })).toMatchObject([load]);
    const other = await jobs.duplicate(id);
    expect(await jobs.compare({ id }, { id: other })).toMatchObject([{ path: "title", after: "Saloon (copy)" }]);
  });

  it("says which version is not there", async () => {
    const { jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    await expect(jobs.readVersion(id, 7)).rejects.toThrow("no version 7");
  });
});

describe("files", () => {
  it("gives back the same job from the file it saved, without positions or drafts", async () => {
    const { jobs } = await onePage();
    const job = withRecordedRoad(inventedJob("Saloon"), 1000);
    await jobs.create(job, "the demo");
    await jobs.putTrack("usual", { latitude_deg: Float64Array.of(51), longitude_deg: Float64Array.of(0) });
    jobs.saveDraft("title", halfTyped("Sal"));
    const { name, text } = await jobs.exportFile();
    expect(name).toMatch(/^saloon-2023-11-1\d\.bellhousing\.json$/);
    expect(text).not.toMatch(/latitude|longitude|Sal"/);
    const id = await jobs.importFile(file(text, name));
    expect(await jobs.open(id)).toEqual(job);
    expect(jobs.list.value).toHaveLength(2);
  });

  it("says all that is wrong with a bad file and leaves everything as it was", async () => {
    const { jobs } = await onePage();
    const id = await jobs.create(inventedJob(), "the demo");
    jobs.saveDraft("title", halfTyped("Sal"));
    const bad = { ...inventedJob(), usualDay_km: -4, vehicel: {}, packs: [] };
    const error = await jobs.importFile(file(JSON.stringify(bad))).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).problems.map(({ where }) => where).sort()).toEqual([
      "packs",
      "usualDay_km",
      "vehicel",
    ]);
    expect(jobs.current.value?.id).toBe(id);
    expect(jobs.list.value).toHaveLength(1);
    await jobs.flush();
    await jobs.open(id);
    expect(jobs.current.value?.drafts).toEqual({ title: halfTyped("Sal") });
  });

  it("reminds of the file after thirty edits and is quiet after it was saved", async () => {
    const { browser, jobs } = await onePage();
    await jobs.create(inventedJob(), "the demo");
    for (let i = 1; i <= 30; i++) jobs.commit(inventedJob("Saloon", 150 + i), "load");
    await browser.pass(2000);
    expect(jobs.reminder.value).toMatchObject({ kind: "never", edits: 30 });
    await jobs.exportFile();
    expect(jobs.reminder.value).toBeUndefined();
  });
});
