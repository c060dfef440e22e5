import type { Job } from "../../../../shared/job/job.ts";
import { scaledConditions } from "../../../../sim/index.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { SimulationApi } from "../../../worker/api.ts";
import type { Definition } from "../graph.ts";
import { climateOf, machineOf } from "../partsOfJob.ts";
import { refuseEmpty } from "../refuseEmpty.ts";
import { remembering } from "../remembering.ts";

/** The packs in winter, old, and in weather of their own. */
export function conditionValues(simulation: SimulationApi): Definition[] {
  const sameClimate = remembering((whole: Job) => ({ ...machineOf(whole), ...climateOf(whole) }));
  return [
    {
      name: "climate",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        refuseEmpty(empty, (path) => !/^(usualDay_km|longestDay_km|engine|notes)/.test(path));
        return sameClimate(whole);
      },
    },
    {
      name: "inConditions",
      inputs: ["climate", "road", "runs"],
      waitsFor: ["runs"],
      ask: async ({ climate, road, runs }: Values & { climate: Job }) => {
        const today = runs.candidates.map(({ range_km }) => ({ range_km }));
        const none = climate.packs.map(() => ({ others: [] }));
        return { today, drives: climate.conditions ? await simulation.conditions(climate, road) : none };
      },
    },
    {
      name: "judged",
      inputs: ["runs", "inConditions"],
      compute: ({ runs, inConditions: { today, drives } }: Values) => scaledConditions(drives, today, runs.candidates),
    },
  ];
}
