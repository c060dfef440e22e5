import type { Job } from "../../../../shared/job/job.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { SimulationApi } from "../../../worker/api.ts";
import type { Definition } from "../graph.ts";
import { packIn } from "../packIn.ts";
import { moneyOf } from "../partsOfJob.ts";
import { remembering } from "../remembering.ts";

/** The smallest pack that will do, and how sure that is. */
export function sizingValues(simulation: SimulationApi): Definition[] {
  const sameSized = remembering((sized: Job) => sized);
  return [
    {
      name: "sized",
      inputs: ["job", "use", "doubts"],
      compute: ({ job: whole, use, doubts }: Values & { doubts: Job }) =>
        sameSized({
          ...use,
          ...(whole.conditions && { conditions: whole.conditions }),
          accessories: whole.accessories,
          allowance: whole.allowance,
          origins: doubts.origins,
          sizing: whole.sizing,
          supplies: whole.supplies,
          ...moneyOf(whole),
        }),
    },
    {
      // After the band of the answer, for which the same worker is wanted first.
      name: "packStudy",
      inputs: ["sized", "road", "packUnknowns"],
      waitsFor: ["packUnknowns"],
      ask: ({ sized, road }: Values & { sized: Job }) => simulation.packStudy(sized, road),
    },
    {
      name: "besideDays",
      inputs: ["sized", "road", "packStudy", "isSizingOpen"],
      waitsFor: ["packStudy"],
      ask: async ({ sized, road, packStudy, isSizingOpen }: Values & { sized: Job; isSizingOpen: boolean }) =>
        isSizingOpen
          ? simulation.daysFailed({ ...sized, packs: packStudy.beside.map(({ pack }) => pack) }, road)
          : undefined,
    },
    {
      name: "packLife",
      inputs: ["sized", "packIndex", "road", "packUnknowns", "areConditionsOpen"],
      waitsFor: ["packUnknowns"],
      ask: async ({
        sized,
        packIndex,
        road,
        areConditionsOpen,
      }: Values & { sized: Job; areConditionsOpen: boolean }) =>
        areConditionsOpen ? simulation.packLife(sized, packIn(sized, packIndex), road) : undefined,
    },
    {
      // The longest of the studies, and nothing outside its working shows it.
      name: "varied",
      inputs: ["sized", "answerIndex", "road", "packUnknowns", "areUnknownsOpen"],
      waitsFor: ["packUnknowns"],
      ask: async ({ sized, answerIndex, road, areUnknownsOpen }: Values & { sized: Job; areUnknownsOpen: boolean }) =>
        areUnknownsOpen
          ? simulation.vary(sized, packIn(sized, answerIndex), road, { variants: 128, seed: 1 })
          : undefined,
    },
  ];
}
