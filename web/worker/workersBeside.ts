/** The worker that simulates, whose script is a file beside the page's. */
export function simulationWorker(name: string): Worker {
  return new Worker(new URL("./simulation.ts", import.meta.url), { type: "module", name });
}

/** The worker of the room for logs. */
export function roadsWorker(name: string): Worker {
  return new Worker(new URL("./roads.ts", import.meta.url), { type: "module", name });
}
