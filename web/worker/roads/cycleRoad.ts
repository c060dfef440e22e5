import { M_PER_KM } from "../../../shared/units.ts";
import type { Routes } from "../../../sim/index.ts";
import { roadOfTrace } from "./roadOfTrace.ts";
import type { CycleRequest, MadeRoad } from "./roadsApi.ts";

/** A cycle once stays a cycle in the job, with hills where any are laid under; repeated, it becomes a trace. */
export function cycleRoad(routes: Routes, request: CycleRequest, texts: Record<string, string>): MadeRoad {
  const { cycle, title, distance_km, hills } = request;
  const once = routes.cycleTrace(cycle, texts);
  const driven = distance_km === undefined ? once : routes.repeatCycleToDistance(once, distance_km * M_PER_KM);
  const profile = hills && {
    distance_m: Float64Array.from(hills.distance_km, (each_km) => each_km * M_PER_KM),
    elevation_m: Float64Array.from(hills.elevation_m),
  };
  const whole = profile ? routes.layHillsUnder(driven, profile) : driven;
  const made = roadOfTrace(whole, title);
  if (distance_km !== undefined) return made;
  const under = made.road.hills;
  return { ...made, road: { kind: "cycle", title, cycle, ...(under && { hills: under }) } };
}
