import type { Job } from "../../../../shared/job/job.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { SimulationApi } from "../../../worker/api.ts";
import type { Definition } from "../graph.ts";
import { packIn } from "../packIn.ts";
import { weekOf } from "../partsOfJob.ts";
import { refuseEmpty } from "../refuseEmpty.ts";
import { remembering } from "../remembering.ts";

/** Days by the clock. */
export function weekValues(simulation: SimulationApi): Definition[] {
  const sameWeek = remembering((whole: Job) => weekOf(whole));
  return [
    {
      name: "weekJob",
      inputs: ["job", "emptied"],
      compute: ({ job: whole, emptied: empty }: Values & { emptied: string }) => {
        if (whole.week === undefined) return undefined;
        refuseEmpty(empty, (path) => !/^(usualDay_km|longestDay_km|engine|notes|wiring|costs)/.test(path));
        return sameWeek(whole);
      },
    },
    {
      // A few drives for the one pack that is recommended; those of all packs are in its working alone.
      name: "week",
      inputs: ["weekJob", "answerIndex", "isWeekOpen"],
      ask: async ({ weekJob, answerIndex, isWeekOpen }: Values & { weekJob: Job | undefined; isWeekOpen: boolean }) =>
        weekJob &&
        simulation.weeks(weekJob, isWeekOpen ? weekJob.packs.map((_, i) => i) : [packIn(weekJob, answerIndex)]),
    },
  ];
}
