import type { Job } from "../../../../shared/job/job.ts";
import { answerFor, enoughFor, packsInQuestion, packsToSample } from "../../../../sim/index.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { SimulationApi } from "../../../worker/api.ts";
import type { Definition } from "../graph.ts";

/** The answer with its bands, and which pack is shown. */
export function answerValues(simulation: SimulationApi): Definition[] {
  return [
    {
      name: "packIndex",
      inputs: ["runs", "answerIndex", "chosenPack"],
      waitsFor: ["runs", "answerIndex"],
      compute: ({ runs, answerIndex, chosenPack }: Values & { chosenPack: number | undefined }) =>
        Math.min(chosenPack ?? answerIndex, runs.candidates.length - 1),
    },
    {
      name: "answerIndex",
      inputs: ["use", "judged"],
      waitsFor: ["judged"],
      compute: ({ use, judged }: Values) => answerFor(use, judged, undefined).recommended ?? 0,
    },
    {
      name: "packsInQuestion",
      inputs: ["use", "runs"],
      waitsFor: ["runs"],
      compute: ({ use, runs }: Values) => packsInQuestion(use, runs.candidates),
    },
    {
      name: "packUnknowns",
      inputs: ["doubts", "packsInQuestion", "road"],
      ask: (values: Values & { doubts: Job }) =>
        simulation.unknowns(values.doubts, values.packsInQuestion, values.road),
    },
    {
      name: "unknowns",
      inputs: ["packUnknowns", "answerIndex"],
      compute: ({ packUnknowns, answerIndex }: Values) => packUnknowns[answerIndex] ?? [],
    },
    {
      name: "packsToSample",
      inputs: ["use", "judged", "packUnknowns"],
      waitsFor: ["judged", "packUnknowns"],
      compute: ({ use, judged, packUnknowns }: Values) => packsToSample(answerFor(use, judged, packUnknowns)),
    },
    {
      // With the factors of winter and age, by which a job without driven winters goes on from each variant's range.
      name: "sampledJob",
      inputs: ["doubts", "use"],
      compute: ({ doubts, use }: Values & { doubts: Job }): Job => ({ ...doubts, allowance: use.allowance }),
    },
    {
      // Where the verdict hangs on the band, many variants tell it better than single effects; until they are driven those do.
      name: "sampled",
      inputs: ["sampledJob", "packsToSample", "road"],
      waitsFor: ["packsToSample"],
      meanwhile: undefined,
      ask: async ({
        sampledJob,
        packsToSample: indexes,
        road,
      }: Values & { sampledJob: Job; packsToSample: number[] }) =>
        indexes.length > 0 ? simulation.sampleRanges(sampledJob, indexes, road).catch(withoutThem) : [],
    },
    {
      name: "answer",
      inputs: ["use", "judged", "packUnknowns", "sampled"],
      waitsFor: ["judged"],
      compute: ({ use, judged, packUnknowns, sampled }: Values) => answerFor(use, judged, packUnknowns, sampled),
    },
    {
      name: "enough",
      inputs: ["use", "judged"],
      waitsFor: ["judged"],
      compute: ({ use, judged }: Values) => enoughFor(use, judged),
    },
  ];
}

/** The verdict then stands by single effects. */
function withoutThem(error: unknown): [] {
  globalThis.reportError?.(error);
  return [];
}
