import type { Road } from "../../../shared/job/schema/road.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { mergeFineSamples } from "../../trace/mergeFineSamples.ts";
import { fromRestToRest } from "../../trace/restToRest.ts";
import { cycleTrace } from "../../trace/standardCycles.ts";
import type { Profile, Trace } from "../../trace/trace.ts";

/**
 * The trace of a job's road: a standard cycle or a recorded one, with the hills laid under it where the road has any, from rest to
 * rest, its samples no nearer than 0.1 s.
 * `cycleTexts` are the tables of the standard cycles by id, as far as the road needs them. Throws InputError for an unknown cycle.
 */
export function roadTrace(road: Road, cycleTexts: Readonly<Record<string, string>>): Trace {
  const profile = road.hills ? profileOf(road.hills) : undefined;
  if (road.kind === "cycle") {
    const cycle = cycleTrace(road.cycle, cycleTexts);
    return fromRestToRest({ ...cycle, id: road.id, title: road.title, ...(profile ? { profile } : {}) });
  }
  const first_s = road.time_s[0];
  const trace: Trace = {
    id: road.id,
    title: road.title,
    time_s: Float64Array.from(road.time_s, (time_s) => time_s - first_s),
    speed_mps: Float64Array.from(road.speed_kmh, (speed_kmh) => speed_kmh * MPS_PER_KMH),
    ...(profile ? { profile } : {}),
    ...(road.spread ? { spread: road.spread } : {}),
  };
  return fromRestToRest(mergeFineSamples(trace));
}

function profileOf(hills: NonNullable<Road["hills"]>): Profile {
  return {
    distance_m: Float64Array.from(hills.distance_km, (distance_km) => distance_km * M_PER_KM),
    elevation_m: Float64Array.from(hills.elevation_m),
  };
}
