import { M_PER_KM } from "../../../shared/units.ts";
import { gradeOf_ratio } from "../../math/slope.ts";
import type { Channels } from "../../step/channels.ts";
import { LIMITS } from "../../step/limits.ts";
import type { Model } from "../../step/model.ts";
import { recorded } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Stands } from "../driveReport.ts";
import { startTorque } from "../going/startTorque.ts";

/**
 * Where a car comes to stand on a road that asks it to go on, and does not start again: at its very beginning, or on a hill. Nothing where
 * it gets to the end, or is merely slow. `channels` are those of a pass, where they were kept.
 */
export function standsWhere(model: Model, trace: Trace, channels?: Channels): Stands | undefined {
  const driven = channels ?? recorded(model, trace);
  const last = driven.length - 1;
  const { speed_mps, target_mps, distance_m } = driven;
  const stands = (i: number) =>
    speed_mps[i] === 0 && target_mps[i] > 0 && LIMITS[driven.limit[i]] !== "none" && distance_m[i] === distance_m[last];
  let row = 1;
  while (row <= last && !stands(row)) row++;
  if (row > last) return undefined;
  // The gear in which it tries to start, rather than that in which it stopped.
  if (speed_mps[row - 1] > 0 && row < last && stands(row + 1)) row++;
  const sinSlope = slopeAt(trace, distance_m[row]);
  const gear = model.gears[driven.gear[row]];
  const { needed_Nm, available_Nm, limit } = startTorque(model, gear, sinSlope, {
    soc_frac: driven.soc_frac[row],
    motor_K: driven.motor_K[row],
    pack_K: driven.pack_K[row],
  });
  if (available_Nm >= needed_Nm) return undefined;
  return {
    distance_km: distance_m[row] / M_PER_KM,
    grade_ratio: gradeOf_ratio(sinSlope),
    gear: gear.name,
    needed_Nm,
    available_Nm,
    limit,
  };
}

/** Sine of the slope ahead of a place, level beyond the heights: rise over the length of the road, which is measured along it. */
function slopeAt({ profile }: Trace, place_m: number): number {
  if (profile === undefined) return 0;
  const { distance_m, elevation_m } = profile;
  const next = distance_m.findIndex((at_m) => at_m > place_m);
  if (next < 1) return 0;
  return (elevation_m[next] - elevation_m[next - 1]) / (distance_m[next] - distance_m[next - 1]);
}
