import { signal } from "@preact/signals-core";
import { describe, expect, it } from "vitest";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { earlierLook } from "../../../../web/notebook/jobs/earlierLook.ts";
import { keepJobs } from "../../../../web/notebook/jobs/keepJobs.ts";
import type { JobVersion } from "../../../../web/store/jobsDoor.ts";
import type { CurrentJob } from "../../../../web/store/openJob.ts";
import { demoJob } from "../../../support/demoJob.ts";

const version: JobVersion = {
  number: 3,
  startedAt_ms: 0,
  endedAt_ms: 60_000,
  reason: "Usual day",
  edits: 1,
  isPresent: false,
};
const earlier = { ...demoJob(), usualDay_km: 61, title: "As it was" };
const asEdit = "back to version 3: Usual day";

/** An editor with a job that is kept, a state of it to look at, and what the store is told meanwhile. */
function looking() {
  const current = signal<CurrentJob | undefined>({ id: "a", job: demoJob(), drafts: {}, arrival: 1 });
  const jobEditor = createJobEditor({ job: demoJob(), drafts: {} });
  const told: string[] = [];
  const say = (words: string) => void told.push(words);
  keepJobs(jobEditor, {
    current,
    saveDraft: (path) => say(`draft ${path}`),
    dropDraft: (path) => say(`no draft ${path}`),
    commit: (job, reason) => say(`${job.usualDay_km} km, ${reason}`),
  });
  const packIndex = signal<number | undefined>(1);
  const look = earlierLook(jobEditor, packIndex, {
    current,
    flush: async () => {},
    readVersion: async (id, number) => {
      if (id !== "a" || number !== 3) throw new Error(`no version ${number}`);
      return earlier;
    },
    restore: async () => {
      current.value = { id: "a", job: earlier, drafts: {}, arrival: 2, asEdit };
    },
  });
  return { current, jobEditor, told, look, packIndex };
}

describe("looking at an earlier version", () => {
  it("shows it in place of the job, and the store hears nothing of it", async () => {
    const { jobEditor, look, told } = looking();
    await look.open(version);
    expect(look.looked.value).toEqual({ version, isPassed: false });
    expect(jobEditor.job.value.title).toBe("As it was");
    expect(jobEditor.kept.value.job.title).toBe(demoJob().title);
    look.back();
    expect(jobEditor.job.value).toEqual(demoJob());
    expect(look.looked.value).toBeUndefined();
    expect(told).toEqual([]);
  });

  it("takes no edit, and leaves what can be taken back as it was", async () => {
    const { jobEditor, look, told } = looking();
    jobEditor.edit("usualDay_km", "50", 50, { what: "Usual day" });
    jobEditor.keepDraft("vehicle.load_kg", "two peop", "found no number", "Load");
    told.length = 0;
    await look.open(version);
    jobEditor.edit("usualDay_km", "99", 99, { what: "Usual day" });
    jobEditor.editPlain("title", "x", "Title");
    jobEditor.keepDraft("usualDay_km", "x", "found no number", "Usual day");
    expect(jobEditor.change("a pack more", (state) => state)).toMatchObject([{ code: "onlyLooked" }]);
    expect(jobEditor.undo()).toBeUndefined();
    expect([jobEditor.undoes.value, jobEditor.drafts.value]).toEqual([undefined, {}]);
    expect(jobEditor.job.value).toBe(earlier);
    look.back();
    expect([jobEditor.job.value.usualDay_km, jobEditor.undoes.value]).toEqual([50, "Load"]);
    expect(jobEditor.drafts.value["vehicle.load_kg"]?.typed).toBe("two peop");
    expect(told).toEqual([]);
  });

  it("becomes the job as one step, which is taken back with the words that stood half typed", async () => {
    const { jobEditor, look, told } = looking();
    jobEditor.keepDraft("vehicle.load_kg", "two peop", "found no number", "Load");
    await look.open(version);
    told.length = 0;
    await look.takeUp();
    expect(look.looked.value).toBeUndefined();
    expect([jobEditor.job.value.usualDay_km, jobEditor.undoes.value]).toEqual([61, asEdit]);
    expect(told).toEqual([]); // the store did it, and is not told of its own doing
    expect(jobEditor.undo()).toBe(asEdit);
    expect(jobEditor.job.value.usualDay_km).toBe(demoJob().usualDay_km);
    expect(told).toContain(`${demoJob().usualDay_km} km, undone: ${asEdit}`);
    expect(told).toContain("draft vehicle.load_kg");
  });

  it("goes on while another tab changes the job, and says so; the change is there on the way back", async () => {
    const { current, jobEditor, look } = looking();
    await look.open(version);
    current.value = { id: "a", job: { ...demoJob(), usualDay_km: 77 }, drafts: {}, arrival: 2 };
    expect(jobEditor.job.value.usualDay_km).toBe(61);
    expect(look.looked.value?.isPassed).toBe(true);
    look.back();
    expect(jobEditor.job.value.usualDay_km).toBe(77);
  });

  it.each([["another job is opened"], ["the job is deleted"]])("ends when %s", async (what) => {
    const { current, jobEditor, look } = looking();
    await look.open(version);
    const other = { id: "b", job: { ...demoJob(), title: "Another" }, drafts: {}, arrival: 2 };
    current.value = what === "another job is opened" ? other : undefined;
    expect(look.looked.value).toBeUndefined();
    expect(jobEditor.job.value.title).toBe(current.value?.job.title ?? demoJob().title);
  });

  it("gives the pack that was chosen back, also by way of a second state", async () => {
    const { look, packIndex } = looking();
    await look.open(version);
    expect(packIndex.value).toBeUndefined();
    await look.open(version);
    look.back();
    expect(packIndex.value).toBe(1);
  });

  it("leaves the page as it was where the state cannot be read", async () => {
    const { jobEditor, look } = looking();
    await expect(look.open({ ...version, number: 4 })).rejects.toThrow("no version 4");
    expect(look.looked.value).toBeUndefined();
    expect(jobEditor.job.value).toEqual(demoJob());
  });
});
