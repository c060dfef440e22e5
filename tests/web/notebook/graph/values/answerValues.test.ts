import { afterEach, expect, it, vi } from "vitest";
import type { Job } from "../../../../../shared/job/job.ts";
import { resultOf } from "../../../../../sim/math/resultOf.ts";
import { sampleRange } from "../../../../../sim/plan/vary/sampleRange.ts";
import type { Definition } from "../../../../../web/notebook/graph/graph.ts";
import { climateOf, doubtsOf, machineOf } from "../../../../../web/notebook/graph/partsOfJob.ts";
import { answerValues } from "../../../../../web/notebook/graph/values/answerValues.ts";
import type { SimulationApi } from "../../../../../web/worker/api.ts";
import { steadyTrace } from "../../../../support/bareCar.ts";
import { demoJob } from "../../../../support/demoJob.ts";

const asked: unknown[][] = [];
let isBroken = false;
const simulation = {
  async sampleRanges(...question: unknown[]) {
    asked.push(question);
    if (isBroken) throw new Error("the worker is gone");
    return ["sampled"];
  },
} as unknown as SimulationApi;
const definitions = new Map(answerValues(simulation).map((each) => [each.name, each]));

/** What a value comes to from others, worked out or asked for. */
function answerTo(name: string, values: Readonly<Record<string, unknown>>): unknown {
  const definition = definitions.get(name) as Definition;
  if ("compute" in definition) return definition.compute(values as never);
  if ("ask" in definition) return definition.ask(values as never);
  throw new Error(`${name} is not worked out`);
}

afterEach(() => {
  asked.length = 0;
  isBroken = false;
  vi.unstubAllGlobals();
});

it("shows the pack that was chosen, else that of the answer, and none that is no longer there", () => {
  const runs = { candidates: [1, 2, 3] };
  const shown = (chosenPack: number | undefined, answerIndex: number) =>
    answerTo("packIndex", { runs, answerIndex, chosenPack });
  expect([shown(undefined, 1), shown(0, 1), shown(7, 1), shown(undefined, 5)]).toEqual([1, 0, 2, 2]);
});

it("has the unknowns of the pack of the answer, and none where it has none", () => {
  const packUnknowns = [["a"], ["b"]];
  expect(answerTo("unknowns", { packUnknowns, answerIndex: 1 })).toEqual(["b"]);
  expect(answerTo("unknowns", { packUnknowns, answerIndex: 2 })).toEqual([]);
});

it("drives variants only of packs whose verdict hangs on them", async () => {
  const values = { sampledJob: "job", road: "road" };
  expect(await answerTo("sampled", { ...values, packsToSample: [] })).toEqual([]);
  expect(asked).toEqual([]);
  expect(await answerTo("sampled", { ...values, packsToSample: [2] })).toEqual(["sampled"]);
  expect(asked).toEqual([["job", [2], "road"]]);
});

it("drives the variants that the command line drives of the same job, its winter driven or a factor", () => {
  const driven = demoJob(0);
  const { conditions: _conditions, ...byFactor } = driven;
  for (const job of [driven, byFactor]) {
    const doubts = { ...machineOf(job), ...climateOf(job), ...doubtsOf(job) };
    const sampledJob = answerTo("sampledJob", { doubts, use: job }) as Job;
    const ranges = (of: Job) =>
      resultOf(sampleRange(of, 1, steadyTrace(15, 100, 1), "tenYearsWinter", { variants: 8, seed: 1 }));
    expect(ranges(sampledJob)).toEqual(ranges(job));
  }
});

it("lets the verdict stand without variants that could not be driven, and reports that", async () => {
  const reported = vi.fn();
  vi.stubGlobal("reportError", reported);
  isBroken = true;
  expect(await answerTo("sampled", { sampledJob: "job", road: "road", packsToSample: [0] })).toEqual([]);
  expect(reported).toHaveBeenCalledExactlyOnceWith(new Error("the worker is gone"));
});
