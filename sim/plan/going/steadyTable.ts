import type { Job } from "../../../shared/job/job.ts";
import { J_PER_WH, M_PER_KM, MPS_PER_KMH, RADPS_PER_RPM } from "../../../shared/units.ts";
import { createChannels } from "../../step/channels.ts";
import { LIMITS } from "../../step/limits.ts";
import type { Model } from "../../step/model.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";
import { drag_N, rolling_N } from "../../vehicle/roadLoad.ts";
import type { SteadyRow } from "../driveReport.ts";
import { holdSpeed } from "./holdSpeed.ts";

const STEP_s = 10;
const SETTLE_STEPS = 60;
/** What can be held is found to this. */
const FOUND_kmh = 1;

/**
 * Energy and range at steady speeds on a level road in the job's own weather: what a technician checks first.
 *
 * Energy, torque and efficiency are those ten minutes after the start, charged as far as it is. The range is driven at that speed
 * until the pack is empty; a speed that the car does not hold so long, its motor or pack too hot or too weak, has none, and the row
 * has how long it is held, what ends that, and the highest speed that is held from full to empty.
 */
export function steadyTable(job: Job, packIndex: number, speeds_kmh: readonly number[]): SteadyRow[] {
  const model = prepare(job, job.packs[packIndex]);
  const channels = createChannels(SETTLE_STEPS + 1);
  let heldAlways_kmh: number | undefined;
  return speeds_kmh.map((speed_kmh): SteadyRow => {
    run(model, steadyTrace(speed_kmh), channels);
    const last = channels.length - 1;
    const shaft_W = channels.motorTorque_Nm[last] * channels.motorSpeed_radps[last];
    const battery_W = channels.battery_W[last];
    const driven_mps = channels.speed_mps[last];
    const speed_mps = speed_kmh * MPS_PER_KMH;
    const hold = holdSpeed(model, speed_mps);
    if (!hold.isHeld) heldAlways_kmh ??= highestHeld_kmh(model, speed_kmh);
    return {
      speed_kmh,
      rolling_N: rolling_N(model.road, speed_mps, 1),
      aero_N: drag_N(model.road, speed_mps),
      drag_N: model.road.wheelDrag_N,
      battery_Whpkm: driven_mps > 0 ? battery_W / J_PER_WH / (driven_mps / M_PER_KM) : 0,
      motor_rpm: channels.motorSpeed_radps[last] / RADPS_PER_RPM,
      motor_Nm: channels.motorTorque_Nm[last],
      efficiency_frac: shaft_W > 0 ? shaft_W / channels.controller_W[last] : 0,
      isHeld: hold.isHeld,
      limit: LIMITS[hold.limit],
      ...(hold.isHeld
        ? { range_km: hold.distance_m / M_PER_KM, isAtLeast: hold.isAtLeast }
        : { heldFor_s: hold.held_s, ...(heldAlways_kmh !== undefined && { heldAlways_kmh }) }),
    };
  });
}

/** The highest whole speed below one that is not held that is held until the pack is empty; 0 where none is. */
function highestHeld_kmh(model: Model, below_kmh: number): number {
  let held_kmh = 0;
  let not_kmh = Math.ceil(below_kmh);
  while (not_kmh - held_kmh > FOUND_kmh) {
    const middle_kmh = Math.floor(0.5 * (held_kmh + not_kmh));
    if (holdSpeed(model, middle_kmh * MPS_PER_KMH).isHeld) held_kmh = middle_kmh;
    else not_kmh = middle_kmh;
  }
  return held_kmh;
}

function steadyTrace(speed_kmh: number): Trace {
  const rows = SETTLE_STEPS + 1;
  return {
    id: "steady",
    title: `steady ${speed_kmh} km/h`,
    time_s: Float64Array.from({ length: rows }, (_, i) => i * STEP_s),
    speed_mps: new Float64Array(rows).fill(speed_kmh * MPS_PER_KMH),
  };
}
