import type { Job } from "../../shared/job/job.ts";
import { readJob } from "../../shared/job/readJob.ts";
import type { Trace } from "../../sim/trace/trace.ts";
import { bareJob, type Changes, steadyTrace } from "./bareCar.ts";
import { socketOf } from "./chargeable.ts";

/** Rolling drag alone: 0.01 of 1400 kg. */
const ROLLING: NonNullable<Changes["vehicle"]> = {
  tyres: { loadedRadius_mm: 300, rolling_coeff: 0.01, followsTemperature: false },
};
export const DRAG_N = 0.01 * 1400 * 9.81;
/** The road of the invented weeks: 20 km at 20 m/s, a thousand seconds. */
export const ROAD_m = 20_000;

/** One 20 km road at one speed, by the id that the weeks name. */
export function steadyRoad(): ReadonlyMap<string, Trace> {
  return new Map([["steady", steadyTrace(20, 1000, 1)]]);
}

/** A bare car with rolling drag alone, and a week of its own; it is charged at "Home" with 10 A of 230 V, or at "Post" with 16 A. */
export function weekJob(days: readonly unknown[], changes: Changes = {}): Job {
  return readJob({
    ...bareJob({ ...changes, vehicle: { ...ROLLING, ...changes.vehicle } }),
    supplies: [socketOf(10, { name: "Home" }), socketOf(16, { name: "Post" })],
    roads: [{ kind: "trace", id: "steady", title: "Steady", time_s: [0, 1000], speed_kmh: [72, 72] }],
    week: { days },
  });
}
