import { describe, expect, it } from "vitest";
import { sizingValues } from "../../../../../web/notebook/graph/values/sizingValues.ts";
import type { SimulationApi } from "../../../../../web/worker/api.ts";
import { demoJob } from "../../../../support/demoJob.ts";

const job = demoJob(0);
const [asked] = job.packs.slice(-1);

/** What the values ask of a simulation that writes down what it was asked, under these values. */
async function askedFor(name: string, values: object): Promise<readonly unknown[]> {
  const calls: unknown[] = [];
  const simulation = new Proxy({} as SimulationApi, {
    get:
      (_, method) =>
      (...args: unknown[]) => {
        calls.push([method, ...args]);
        return Promise.resolve("answered");
      },
  });
  const found = sizingValues(simulation).find((each) => each.name === name);
  if (!found || !("ask" in found)) throw new Error(`no value ${name} that asks`);
  await found.ask(values as never);
  return calls;
}

const values = { sized: job, road: "road", packIndex: 9, answerIndex: 1, packStudy: { beside: [{ pack: asked }] } };

describe("studies of the size of the pack", () => {
  it("drive the year of the packs beside the smallest while that working is open, and not else", async () => {
    expect(await askedFor("besideDays", { ...values, isSizingOpen: false })).toEqual([]);
    expect(await askedFor("besideDays", { ...values, isSizingOpen: true })).toEqual([
      ["daysFailed", { ...job, packs: [asked] }, "road"],
    ]);
  });

  it("drive the life of the pack looked at while Conditions is open: of the last where it has fewer packs by now", async () => {
    expect(await askedFor("packLife", { ...values, areConditionsOpen: false })).toEqual([]);
    expect(await askedFor("packLife", { ...values, areConditionsOpen: true })).toEqual([
      ["packLife", job, job.packs.length - 1, "road"],
    ]);
  });

  it("draw variants of the recommended pack while that working is open", async () => {
    expect(await askedFor("varied", { ...values, areUnknownsOpen: false })).toEqual([]);
    const [call] = await askedFor("varied", { ...values, areUnknownsOpen: true });
    expect(call).toMatchObject(["vary", job, 1, "road", { seed: 1 }]);
  });
});
