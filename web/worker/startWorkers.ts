import type { SimulationApi } from "./api.ts";
import { livingWorker } from "./livingWorker.ts";
import type { RoadsApi } from "./roads/roadsApi.ts";
import { startRoads } from "./roads/startRoads.ts";
import { startSimulation } from "./simulation/startSimulation.ts";
import type { WorkerApi } from "./workerApi.ts";
import { pageWorker } from "./workersBeside.ts";

/** All that the page asks to be done off its own thread. */
export interface Workers {
  readonly simulation: SimulationApi;
  readonly roads: RoadsApi;
}

/**
 * The one worker of the page, twice over: what follows every key is asked of the first, and never waits for the second, which
 * does studies and logs. Each starts with its first question. `afterFrame` is over once what the page shows has been painted.
 */
export function startWorkers(afterFrame: () => Promise<void>): Workers {
  const drives = livingWorker<WorkerApi>(pageWorker, "drives");
  const studies = livingWorker<WorkerApi>(pageWorker, "studies");
  return { simulation: startSimulation(drives, studies, afterFrame), roads: startRoads(studies) };
}
