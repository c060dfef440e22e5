import type { Job } from "../../../../shared/job/job.ts";
import { answerFor, enoughFor, packsInQuestion } from "../../../../sim/index.ts";
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
      name: "answer",
      inputs: ["use", "judged", "packUnknowns"],
      waitsFor: ["judged"],
      compute: ({ use, judged, packUnknowns }: Values) => answerFor(use, judged, packUnknowns),
    },
    {
      name: "enough",
      inputs: ["use", "judged"],
      waitsFor: ["judged"],
      compute: ({ use, judged }: Values) => enoughFor(use, judged),
    },
  ];
}
