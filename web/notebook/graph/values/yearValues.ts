import type { Job } from "../../../../shared/job/job.ts";
import { type YearRanges, yearOf } from "../../../../sim/index.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { SimulationApi } from "../../../worker/api.ts";
import type { Definition } from "../graph.ts";
import { climateOf, climateOfYear, machineOf } from "../partsOfJob.ts";
import { refuseEmpty } from "../refuseEmpty.ts";
import { remembering } from "../remembering.ts";

/** Every evening of a year. */
export function yearValues(simulation: SimulationApi): Definition[] {
  const sameYear = remembering((whole: Job) => ({
    ...machineOf(whole),
    ...climateOf(whole),
    allowance: whole.allowance,
    ...(whole.year && { year: climateOfYear(whole.year) }),
  }));
  return [
    {
      name: "yearClimate",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        refuseEmpty(empty, (path) => !/^(usualDay_km|longestDay_km|engine|notes)/.test(path));
        return sameYear(whole);
      },
    },
    {
      name: "yearRanges",
      inputs: ["yearClimate", "road"],
      ask: ({ yearClimate, road }: Values & { yearClimate: Job }) => simulation.yearRanges(yearClimate, road),
    },
    {
      name: "year",
      inputs: ["use", "yearRanges"],
      waitsFor: ["yearRanges"],
      compute: ({ use, yearRanges }: Values & { yearRanges: YearRanges }) => yearOf(use, yearRanges),
    },
  ];
}
