import { wrap } from "comlink";
import type { SimulationApi } from "./api.ts";
import { oneOfAKind } from "./oneOfAKind.ts";
import { simulationWorker } from "./workersBeside.ts";

/** A study begins when nothing was changed for so long: before that the processor is wanted for driving and drawing. */
const REST_ms = 250;

/**
 * Starts the simulation in two workers: one for what follows every key, one for studies of many drives, so that the
 * first never waits for the second. One question of a kind is with a worker at a time; of those that wait, the newest counts.
 */
export function startSimulation(): SimulationApi {
  const drives = wrap<SimulationApi>(simulationWorker("drives"));
  const studies = wrap<SimulationApi>(simulationWorker("studies"));
  const ask = oneOfAKind();
  const study = oneOfAKind(REST_ms);
  return {
    road: (job, roadId) => ask("road", () => drives.road(job, roadId)),
    drive: (job, trace) => ask("drive", () => drives.drive(job, trace)),
    steady: (job, speeds_kmh) => ask("steady", () => drives.steady(job, speeds_kmh)),
    motorSurface: (job, packIndex) => ask("motorSurface", () => drives.motorSurface(job, packIndex)),
    unknowns: (job, packIndex, trace) => study("unknowns", () => studies.unknowns(job, packIndex, trace)),
  };
}
