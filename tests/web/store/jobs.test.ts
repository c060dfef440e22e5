import { describe, expect, it } from "vitest";
import { InputError } from "../../../shared/problems.ts";
import { StoreRefusal } from "../../../web/store/database/storeRefusal.ts";
import { PAUSE_ms } from "../../../web/store/database/versionPolicy.ts";
import type { FileLike } from "../../../web/store/files/readJobFile.ts";
import { openJobs } from "../../../web/store/jobs.ts";
import { halfTyped, inventedJob, withRecordedRoad } from "../../support/inventedJob.ts";
import { guardedStore, type PageOptions } from "../../support/inventedWorld.ts";
import { onePage } from "./storedJobs.ts";

function file(text: string, name = "job.bellhousing.json"): FileLike & { lastModified: number } {
  const bytes = new TextEncoder().encode(text);
  return { name, size: bytes.length, lastModified: 1, arrayBuffer: async () => bytes.buffer };
}

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
