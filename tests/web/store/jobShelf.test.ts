import { describe, expect, it } from "vitest";
import { InputError } from "../../../shared/problems.ts";
import { REMOVED_KEPT_OPENINGS } from "../../../web/store/jobShelf.ts";
import { openJobs } from "../../../web/store/jobs.ts";
import { halfTyped, inventedJob, withRecordedRoad } from "../../support/inventedJob.ts";
import { onePage } from "./storedJobs.ts";

const DAY_ms = 86_400_000;

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
