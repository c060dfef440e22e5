import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { driveJob, roadTrace } from "../../../../sim/index.ts";
import type { LivingWorker } from "../../../../web/worker/livingWorker.ts";
import { drivePacks, inHalves } from "../../../../web/worker/simulation/drivePacks.ts";
import type { WorkerApi } from "../../../../web/worker/workerApi.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";

const job = demoJob();
const trace = roadTrace(job.roads[0], cycleTexts);

/** A worker that drives in place, and the names of the packs that it drove. */
function inPlace(isIdle: boolean) {
  const drove: string[] = [];
  const api = {
    keepTrace: async () => {},
    dropTrace: async () => {},
    drive: async (asked: Job) => {
      drove.push(...asked.packs.map(({ name }) => name));
      return driveJob(asked, trace, { channels: true });
    },
  };
  const life = { api, sent: new Set<number>() };
  const worker = {
    isIdle: () => isIdle,
    ask: (question: (one: typeof life) => unknown) => question(life),
    renew: () => {},
  };
  return { worker: worker as unknown as LivingWorker<WorkerApi>, drove };
}

describe("packs driven by two workers", () => {
  it("come out as from one, in the job's order", async () => {
    const [first, second] = [inPlace(true), inPlace(true)];
    const report = await drivePacks(first.worker, second.worker, job, trace);
    expect(report).toEqual(driveJob(job, trace, { channels: true }));
    expect(first.drove.length).toBeGreaterThan(0);
    expect(second.drove.length).toBeGreaterThan(0);
    expect([...first.drove, ...second.drove].sort()).toEqual(job.packs.map(({ name }) => name).sort());
  });

  it("are all the first one's while the second has something to do, and where there is one pack", async () => {
    const [first, busy, idle] = [inPlace(true), inPlace(false), inPlace(true)];
    await drivePacks(first.worker, busy.worker, job, trace);
    expect(first.drove).toEqual(job.packs.map(({ name }) => name));
    await drivePacks(first.worker, idle.worker, { ...job, packs: job.packs.slice(0, 1) }, trace);
    expect([...busy.drove, ...idle.drove]).toEqual([]);
  });

  it("are shared by size: neither half is larger by more than the smallest pack of five", () => {
    const [mine, others] = inHalves(job.packs);
    const size = (places: readonly number[]) =>
      places.reduce((sum, place) => sum + job.packs[place].seriesModules * job.packs[place].parallelModules, 0);
    const smallest = Math.min(...job.packs.map((_, place) => size([place])));
    expect(Math.abs(size(mine) - size(others))).toBeLessThanOrEqual(smallest);
    expect([...mine, ...others].sort()).toEqual([0, 1, 2, 3, 4]);
  });
});
