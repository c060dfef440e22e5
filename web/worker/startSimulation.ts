import { wrap } from "comlink";
import type { SimulationApi } from "./api.ts";
import { oneAtATime } from "./oneAtATime.ts";

/** Starts the simulation's worker. One question is with it at a time; of those that wait, the newest of a kind counts. */
export function startSimulation(): SimulationApi {
  const worker = new Worker(new URL("./simulation.ts", import.meta.url), { type: "module", name: "simulation" });
  const remote = wrap<SimulationApi>(worker);
  const ask = oneAtATime();
  return {
    road: (job, roadId) => ask("road", () => remote.road(job, roadId)),
    drive: (job, trace) => ask("drive", () => remote.drive(job, trace)),
    steady: (job, speeds_kmh) => ask("steady", () => remote.steady(job, speeds_kmh)),
    motorSurface: (job, packIndex) => ask("motorSurface", () => remote.motorSurface(job, packIndex)),
  };
}
