import { describe, expect, it } from "vitest";
import type { Drafts } from "../../../shared/job/draft.ts";
import type { Job } from "../../../shared/job/job.ts";
import { emptyShelves, type MemoryShelves } from "../../../web/store/database/memoryStore.ts";
import { PAUSE_ms } from "../../../web/store/database/versionPolicy.ts";
import { openJobs } from "../../../web/store/jobs.ts";
import type { Jobs } from "../../../web/store/jobsDoor.ts";
import { halfTyped, inventedJob, withRecordedRoad } from "../../support/inventedJob.ts";
import { guardedStore, inventedBrowser } from "../../support/inventedWorld.ts";

interface Typed {
  readonly job: Job;
  readonly drafts: Drafts;
}

/** What a person does in this story, each step with the state it leaves; `rest_ms` is the time until the next. */
const story: readonly { do(jobs: Jobs): unknown; readonly leaves: Typed; readonly rest_ms: number }[] = (() => {
  const a = inventedJob("Saloon", 150);
  const b = inventedJob("Saloon", 160);
  const c = withRecordedRoad(b, 400);
  const d = { ...c, title: "Saloon, second visit" };
  const draft = { "vehicle.load_kg": halfTyped("16") };
  return [
    { do: (jobs) => jobs.create(a, "the demo"), leaves: { job: a, drafts: {} }, rest_ms: 2000 },
    {
      do: (jobs) => jobs.saveDraft("vehicle.load_kg", halfTyped("16")),
      leaves: { job: a, drafts: draft },
      rest_ms: 100,
    },
    { do: (jobs) => jobs.commit(b, "load", ["vehicle.load_kg"]), leaves: { job: b, drafts: {} }, rest_ms: 400 },
    {
      do: (jobs) => jobs.saveDraft("title", halfTyped("Sal")),
      leaves: { job: b, drafts: { title: halfTyped("Sal") } },
      rest_ms: PAUSE_ms,
    },
    { do: (jobs) => jobs.commit(c, "a road"), leaves: { job: c, drafts: { title: halfTyped("Sal") } }, rest_ms: 50 },
    {
      do: (jobs) => jobs.saveDraft("title", halfTyped("Saloo")),
      leaves: { job: c, drafts: { title: halfTyped("Saloo") } },
      rest_ms: 280,
    },
    { do: (jobs) => jobs.commit(d, "title", ["title"]), leaves: { job: d, drafts: {} }, rest_ms: 3000 },
  ];
})();

/**
 * Plays the story on a page whose store stops after `calls` calls: later ones do nothing and never answer. With
 * `isTorn` the last call is carried out but its answer is lost. Returns the last state that reached the store.
 */
async function playUntilCut(calls: number, isTorn: boolean, shelves: MemoryShelves) {
  const browser = inventedBrowser(shelves);
  let made = 0;
  const never = new Promise<never>(() => {});
  const page = browser.page({
    between: (store) =>
      guardedStore(store, (_, call) => {
        made += 1;
        if (made > calls) return never;
        if (made === calls && isTorn) {
          void call();
          return never;
        }
        return call();
      }),
  });
  let jobs: Jobs | undefined;
  void openJobs(page.world).then((opened) => {
    jobs = opened;
  });
  await browser.pass(0);
  let reached: Typed | undefined;
  for (const { do: act, leaves, rest_ms } of story) {
    const before = made;
    if (jobs) void Promise.resolve(act(jobs)).catch(() => {});
    await browser.pass(0);
    // A step has reached the store where its first call was carried out.
    if (made > before && before < calls) reached = leaves;
    await browser.pass(rest_ms);
  }
  page.die();
  return { reached, isOver: made < calls };
}

async function found(shelves: MemoryShelves) {
  const browser = inventedBrowser(shelves);
  const jobs = await openJobs(browser.page().world);
  const states: Typed[] = [];
  for (const { id } of jobs.list.value) {
    await jobs.open(id);
    const { job, drafts } = jobs.current.value!;
    states.push({ job, drafts });
  }
  return { states, status: jobs.status.value, entries: shelves.journal.size };
}

describe.each([false, true])("power cut after any call of the store (last answer lost: %s)", (isTorn) => {
  it("leaves exactly the last state that reached the store, as one job, with nothing half done", async () => {
    const reachedCount = new Set<Typed | undefined>();
    let calls = 0;
    for (; calls < 500; calls++) {
      const shelves = emptyShelves();
      const { reached, isOver } = await playUntilCut(calls, isTorn, shelves);
      const { states, entries } = await found(shelves);
      expect(states, `cut after call ${calls}`).toEqual(reached ? [reached] : []);
      expect(entries, `journal entries left after call ${calls}`).toBe(0);
      reachedCount.add(reached);
      if (isOver) break;
    }
    // Every step of the story was the last one to reach the store for some cut, and so was none at all.
    expect(reachedCount.size).toBe(story.length + 1);
    expect(calls).toBeGreaterThan(2 * story.length);
  });
});
