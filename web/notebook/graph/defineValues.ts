import { type ReadonlySignal, signal } from "@preact/signals-core";
import type { Job } from "../../../shared/job/job.ts";
import type { View } from "../../sections/parts/values.ts";
import type { SimulationApi } from "../../worker/api.ts";
import type { Definition } from "./graph.ts";
import { answerValues } from "./values/answerValues.ts";
import { conditionValues } from "./values/conditionValues.ts";
import { costValues } from "./values/costValues.ts";
import { jobValues } from "./values/jobValues.ts";
import { motorValues } from "./values/motorValues.ts";
import { roadValues } from "./values/roadValues.ts";
import { sizingValues } from "./values/sizingValues.ts";
import { viewValues } from "./values/viewValues.ts";
import { weekValues } from "./values/weekValues.ts";
import { yearValues } from "./values/yearValues.ts";

/** The values below the sections, a file a study. Only these start a simulation. What depends on a field emptied by hand waits for it. */
export function defineValues(
  job: ReadonlySignal<Job>,
  view: View,
  simulation: SimulationApi,
  emptied: ReadonlySignal<readonly string[]> = signal([]),
): Definition[] {
  // Of what is asked at once, the worker is asked in this order.
  return [
    ...viewValues(view),
    ...jobValues(job, emptied),
    ...answerValues(simulation),
    ...sizingValues(simulation),
    ...costValues(),
    ...roadValues(simulation),
    ...conditionValues(simulation),
    ...yearValues(simulation),
    ...weekValues(simulation),
    ...motorValues(simulation),
  ];
}
