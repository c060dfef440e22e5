// Takes the place of workersBeside.ts where the notebook is built as one file: nothing lies beside a page that was sent over,
// and a page opened from disk may not start a worker from a file anyway. The scripts are text inside the page.
import Roads from "./roads.ts?worker&inline";
import Simulation from "./simulation.ts?worker&inline";

/** The worker that simulates. */
export function simulationWorker(name: string): Worker {
  return new Simulation({ name });
}

/** The worker of the room for logs. */
export function roadsWorker(name: string): Worker {
  return new Roads({ name });
}
