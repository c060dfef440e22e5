import { expect, it } from "vitest";
import { inventedJob } from "../../support/inventedJob.ts";
import { onePage } from "./storedJobs.ts";

it("copies a job under a title of its own, with its drafts and tracks, and opens the copy", async () => {
  const { page, jobs } = await onePage();
  const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
  jobs.saveDraft("vehicle.load_kg", { typed: "?", problem: "found no number" });
  const track = { latitude_deg: Float64Array.of(50), longitude_deg: Float64Array.of(7), tripRows: [0] };
  await jobs.putTrack("log-1", track);
  await jobs.flush();
  const copyId = await jobs.duplicate(id);
  expect(copyId).not.toBe(id);
  expect(jobs.current.value?.id).toBe(copyId);
  const store = await page.world.openStore();
  const copy = await store.read(copyId);
  expect(copy?.head.title).toBe("Saloon (copy)");
  expect(copy?.head.version.reason).toBe("copied from Saloon");
  expect(copy?.drafts).toEqual({ "vehicle.load_kg": { typed: "?", problem: "found no number" } });
  expect((await store.readTrack(copyId, "log-1"))?.latitude_deg).toEqual(track.latitude_deg);
  expect((await store.read(id))?.head.title).toBe("Saloon");
});

it("cuts a title that would be longer than a job may have", async () => {
  const { jobs } = await onePage();
  const id = await jobs.create(inventedJob("T".repeat(200), 150), "the demo");
  await jobs.duplicate(id);
  // 190 letters and seven of " (copy)".
  expect(jobs.list.value.map(({ title }) => title.length).sort()).toEqual([197, 200]);
});

it("saves the open job as a file and remembers that it did", async () => {
  const { browser, page, jobs } = await onePage();
  const id = await jobs.create(inventedJob("Saloon", 150), "the demo");
  jobs.commit(inventedJob("Saloon", 175), "load");
  const { name, text } = await jobs.exportFile();
  expect(JSON.parse(text)).toEqual(inventedJob("Saloon", 175));
  expect(browser.downloads).toEqual([{ name, text }]);
  const store = await page.world.openStore();
  expect((await store.read(id))?.head.file).toMatchObject({ name, editCount: 1 });
});

it("says so where no job is open to be saved or shared", async () => {
  const { jobs } = await onePage();
  await expect(jobs.exportFile()).rejects.toThrow("no open job to save");
  await expect(jobs.share()).rejects.toThrow("no open job to share");
});
