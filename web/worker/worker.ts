import { expose } from "comlink";
import { holdLife } from "./holdLife.ts";
import { roads } from "./roads/roads.ts";
import { simulation } from "./simulation/simulation.ts";
import type { WorkerApi } from "./workerApi.ts";

// The worker's side: all that the page asks of a worker. Columns are made for the page and handed over, not copied.
const api: WorkerApi = { ...simulation, ...roads, holdLife };
expose(api);
