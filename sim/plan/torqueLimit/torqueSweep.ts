import { engineTorque_Nm } from "../../../shared/job/engineTorque.ts";
import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { J_PER_WH, M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { gradeOf_ratio, sineOf } from "../../math/slope.ts";
import { createChannels } from "../../step/channels.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";
import { standingStart, timeTo_s } from "../going/standingStart.ts";
import { startTorque, steepestStart } from "../going/startTorque.ts";
import { recommendLimit } from "./recommendLimit.ts";
import { secondsBehind } from "./secondsBehind.ts";
import { type ShaftTorques, shaftTorques } from "./shaftTorques.ts";

/** What one limit of the motor's torque does to the old parts, the driver and the road. */
export interface TorqueRow {
  /** At the motor shaft, which is the gearbox input when nothing speeds up. */
  readonly torque_Nm: number;
  readonly gears: readonly ShaftTorques[];
  /** From rest, torque coming in over the job's ramp, in the gears that are used; absent where not reached in two minutes. */
  readonly to50kmh_s?: number;
  readonly to100kmh_s?: number;
  readonly from80to100kmh_s?: number;
  readonly behind_s: number;
  /** Absent where the car does not move. */
  readonly battery_Whpkm?: number;
  /** The steepest it starts on in the gear it starts in, as rise over run. */
  readonly steepestStart_ratio: number;
  /** On the steepest hill asked for; absent where none is known. */
  readonly hill?: { readonly starts: boolean; readonly spare_frac: number };
}

const START_s = 120;
const START_STEP_s = 0.05;
/** Shares of the motor's peak that are tried where nobody names torques. */
const SHARES = [0.5, 0.75, 1];

/** Torques at the motor shaft to try: round shares of the motor's peak, the cap as set, the old engine's peak, and what is recommended. */
export function usualCaps_Nm(job: Job): number[] {
  const peak_Nm = peakTorque_Nm(job.motor.envelope);
  const named = [
    job.controller.torqueCap_Nm,
    engineTorque_Nm(job),
    job.driveline.limits.gearboxInput_Nm,
    recommendLimit(job)?.torque_Nm,
  ];
  const tried = [...SHARES.map((share) => share * peak_Nm), ...named.filter((torque_Nm) => torque_Nm !== undefined)];
  return [...new Set(tried.filter((torque_Nm) => torque_Nm <= peak_Nm))].sort((a, b) => a - b);
}

/**
 * The same car and road with each of several limits of the motor's torque. Limits of the old parts are left out of the drives: the
 * controller knows no gear, so what it lets through arrives, and the row says what that is in each of them.
 */
export function torqueSweep(
  job: Job,
  packIndex: number,
  trace: Trace,
  caps_Nm: readonly number[],
  hill_ratio?: number,
): TorqueRow[] {
  return caps_Nm.map((torque_Nm) => torqueRow(job, packIndex, trace, torque_Nm, hill_ratio));
}

function torqueRow(job: Job, packIndex: number, trace: Trace, torque_Nm: number, hill_ratio?: number): TorqueRow {
  const controller = { ...job.controller, torqueCap_Nm: torque_Nm };
  const model = prepare({ ...job, controller, driveline: { ...job.driveline, limits: {} } }, job.packs[packIndex]);
  const channels = createChannels(trace.time_s.length);
  const { totals } = run(model, trace, channels);
  const start = standingStart(model, START_s, START_STEP_s, controller.ramp_s);
  const to_s = (speed_kmh: number) => timeTo_s(start, speed_kmh * MPS_PER_KMH);
  const [to50kmh_s, to80kmh_s, to100kmh_s] = [to_s(50), to_s(80), to_s(100)];
  const [gear] = model.gears;
  const onHill = hill_ratio === undefined ? undefined : startTorque(model, gear, sineOf(hill_ratio));
  return {
    torque_Nm,
    gears: shaftTorques(job, torque_Nm),
    ...(to50kmh_s !== undefined && { to50kmh_s }),
    ...(to100kmh_s !== undefined && { to100kmh_s }),
    ...(to80kmh_s !== undefined && to100kmh_s !== undefined && { from80to100kmh_s: to100kmh_s - to80kmh_s }),
    behind_s: secondsBehind(channels),
    ...(totals.distance_m > 0 && { battery_Whpkm: totals.terminal_J / J_PER_WH / (totals.distance_m / M_PER_KM) }),
    steepestStart_ratio: gradeOf_ratio(steepestStart(model, gear)),
    ...(onHill && {
      hill: {
        starts: onHill.available_Nm >= onHill.needed_Nm,
        spare_frac: onHill.available_Nm / onHill.needed_Nm - 1,
      },
    }),
  };
}
