import type { Job } from "../../shared/job/job.ts";
import { J_PER_WH, M_PER_KM, MPS_PER_KMH, RADPS_PER_RPM } from "../../shared/units.ts";
import { createChannels, LIMITS } from "../step/channels.ts";
import { prepare } from "../step/prepare.ts";
import { run } from "../step/run.ts";
import type { Trace } from "../trace/trace.ts";
import { drag_N, rolling_N } from "../vehicle/roadLoad.ts";
import type { SteadyRow } from "./driveReport.ts";
import { rangeOn } from "./range.ts";

const STEP_s = 10;
const SETTLE_STEPS = 60;
/** A speed counts as held within this. */
const HELD_kmh = 0.5;

/**
 * Energy and range at steady speeds on a level road in the job's own weather: what a technician checks first.
 * Energy, torque and efficiency are those ten minutes after the ceiling; range is driven to the floor.
 */
export function steadyTable(job: Job, packIndex: number, speeds_kmh: readonly number[]): SteadyRow[] {
  const model = prepare(job, job.packs[packIndex]);
  const channels = createChannels(SETTLE_STEPS + 1);
  return speeds_kmh.map((speed_kmh): SteadyRow => {
    const trace = steadyTrace(speed_kmh);
    run(model, trace, channels);
    const last = channels.length - 1;
    const shaft_W = channels.motorTorque_Nm[last] * channels.motorSpeed_radps[last];
    const battery_W = channels.battery_A[last] * channels.battery_V[last];
    const attained_kmh = channels.speed_mps[last] / MPS_PER_KMH;
    const speed_mps = speed_kmh * MPS_PER_KMH;
    return {
      speed_kmh,
      rolling_N: rolling_N(model.road, speed_mps, 1),
      aero_N: drag_N(model.road, speed_mps),
      drag_N: model.road.wheelDrag_N,
      isHeld: attained_kmh > speed_kmh - HELD_kmh,
      battery_Whpkm: attained_kmh > 0 ? battery_W / J_PER_WH / (channels.speed_mps[last] / M_PER_KM) : 0,
      range_km: rangeOn(model, trace).distance_m / M_PER_KM,
      motor_rpm: channels.motorSpeed_radps[last] / RADPS_PER_RPM,
      motor_Nm: channels.motorTorque_Nm[last],
      efficiency_frac: shaft_W > 0 ? shaft_W / channels.controller_W[last] : 0,
      limit: LIMITS[channels.limit[last]],
    };
  });
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
