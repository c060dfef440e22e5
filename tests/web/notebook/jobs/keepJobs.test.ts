import { signal } from "@preact/signals-core";
import { describe, expect, it } from "vitest";
import type { Draft } from "../../../../shared/job/draft.ts";
import type { Job } from "../../../../shared/job/job.ts";
import { createJobEditor } from "../../../../web/editing/jobEditor.ts";
import { keepJobs } from "../../../../web/notebook/jobs/keepJobs.ts";
import type { CurrentJob } from "../../../../web/store/openJob.ts";
import { demoJob } from "../../../support/demoJob.ts";

const load = "vehicle.load_kg";
const about = { what: "People and luggage" };

/** A store that writes down what it is told. */
function kept(drafts: CurrentJob["drafts"] = {}) {
  const current = signal<CurrentJob | undefined>({ id: "a", job: demoJob(), drafts, arrival: 1 });
  const told: string[] = [];
  const keeper = {
    current,
    saveDraft: (path: string, { typed }: Draft) => void told.push(`draft ${path}: ${typed}`),
    dropDraft: (path: string) => void told.push(`no draft ${path}`),
    commit: (job: Job, reason: string, settled: readonly string[] = []) =>
      void told.push(`load ${job.vehicle.load_kg}, ${reason}, settles ${settled.join() || "nothing"}`),
  };
  const jobEditor = createJobEditor({ job: demoJob(), drafts: {} });
  const stop = keepJobs(jobEditor, keeper);
  return { current, told, jobEditor, stop };
}

describe("keeping the job", () => {
  it("tells the store of every edit with its reason, and of nothing when a job arrives", () => {
    const { told, jobEditor } = kept();
    expect(told).toEqual([]);
    jobEditor.edit(load, "120", 120, about);
    expect(told).toEqual(["load 120, People and luggage, settles nothing"]);
  });

  it("tells the store every letter of a half-typed word, and when it is settled", () => {
    const { told, jobEditor } = kept();
    jobEditor.keepDraft(load, "tw", "found no number", about.what);
    jobEditor.keepDraft(load, "two", "found no number", about.what);
    jobEditor.edit(load, "2 kg", 2, about);
    expect(told).toEqual([`draft ${load}: tw`, `draft ${load}: two`, `load 2, People and luggage, settles ${load}`]);
  });

  it("tells the store of what is taken back", () => {
    const { told, jobEditor } = kept();
    jobEditor.keepDraft(load, "two", "found no number", about.what);
    jobEditor.undo();
    expect(told.at(-1)).toBe(`no draft ${load}`);
  });

  it("puts a job that arrives onto the jobEditor, half-typed words in their fields again", () => {
    const { current, told, jobEditor } = kept({ [load]: { typed: "two peop", problem: "found no number" } });
    expect(jobEditor.drafts.value[load]).toMatchObject({ typed: "two peop" });
    jobEditor.edit("usualDay_km", "50", 50, { what: "Usual day" });
    told.length = 0;
    current.value = { id: "b", job: { ...demoJob(), title: "Another" }, drafts: {}, arrival: 2 };
    expect(jobEditor.job.value.title).toBe("Another");
    expect(jobEditor.drafts.value).toEqual({});
    expect(jobEditor.undoes.value).toBeUndefined();
    expect(told).toEqual([]);
  });

  it("leaves a stored text in its field that could be read by now: loading is no edit", () => {
    const drafts = {
      [load]: { typed: "77 kg", problem: "more than the car weighs", value: 77 },
      title: { typed: "", problem: "empty" },
    };
    const { told, jobEditor } = kept(drafts);
    expect(jobEditor.job.value).toEqual(demoJob());
    expect(jobEditor.drafts.value).toEqual(drafts);
    expect(told).toEqual([]);
  });
});
