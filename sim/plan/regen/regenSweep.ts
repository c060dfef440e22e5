import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import { J_PER_WH, M_PER_KM, MPS_PER_KMH, ZERO_CELSIUS_K } from "../../../shared/units.ts";
import { greatestWhere } from "../../math/halving.ts";
import { createChannels } from "../../step/channels.ts";
import { type Model, modelWith } from "../../step/model.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";
import { gripForce_N } from "../../vehicle/grip.ts";
import { rangeOn } from "../going/range.ts";

/** What one setting of braking by the motor does. */
export interface RegenRow {
  /** Limit at the motor shaft. */
  readonly torque_Nm: number;
  readonly battery_Whpkm: number;
  /** Returned at the controller's DC side on one pass, and as a share of what driving took there. */
  readonly regen_Wh: number;
  readonly returned_frac: number;
  readonly range_km: number;
  /** Most current into the pack on the road, and what it may take for a moment when warm. */
  readonly charge_A: number;
  readonly chargeLimit_A: number;
  /** Slowing with the foot off at 50 km/h on the level, without the friction brakes: the pack half charged, full, and half charged at 0 degC. */
  readonly slowing_mps2: number;
  readonly fullPack_mps2: number;
  readonly coldPack_mps2: number;
  readonly lamps: "off" | "may light" | "must light";
  /** Friction that the driven axle's tyres need for it; absent where nobody knows where the weight sits. */
  readonly neededGrip_coeff?: number;
}

/** Slowing above which brake lamps may and must light. [UNR13H, 5.2.22.4], from memory. */
export const LAMPS_MAY_mps2 = 0.7;
export const LAMPS_MUST_mps2 = 1.3;
/** Of a worn tyre on a wet road: common practice, no source. Braking on one axle should need less. */
export const WET_coeff = 0.4;

const FROM_kmh = 50;
const HALF_frac = 0.5;
/** Harder than any motor brakes a car. */
const HARD_mps2 = 9;
/** A friction force that counts as none. */
const NO_BRAKE_N = 1e-3;
/** Over so short a time neither speed nor charge changes by what anybody would see. */
const MOMENT_s = 0.01;

/** Shares of the limit as set (of the motor's peak torque where none is) that are tried where nobody names torques. */
const SHARES = [0, 0.25, 0.5, 0.75, 1, 1.5];

/** Torques at the motor shaft to try, around the one that is set. */
export function usualLimits_Nm({ controller, motor }: Job): number[] {
  const peak_Nm = peakTorque_Nm(motor.envelope);
  const set_Nm = controller.regen.isOn ? Math.min(controller.regen.torque_Nm ?? peak_Nm, peak_Nm) : 0.5 * peak_Nm;
  return [...new Set(SHARES.map((share) => Math.min(peak_Nm, share * set_Nm)))];
}

/** The same car and road with each of several limits of braking by the motor, all else as the job says. */
export function regenSweep(job: Job, packIndex: number, trace: Trace, limits_Nm: readonly number[]): RegenRow[] {
  return limits_Nm.map((torque_Nm) => regenRow(job, packIndex, trace, torque_Nm));
}

function regenRow(job: Job, packIndex: number, trace: Trace, torque_Nm: number): RegenRow {
  const { wheelForce_N: _force, ...regen } = job.controller.regen;
  const controller = { ...job.controller, regen: { ...regen, isOn: torque_Nm > 0, torque_Nm } };
  const model = prepare({ ...job, controller }, job.packs[packIndex]);
  const { totals } = run(model, trace);
  const driving_J = totals.terminal_J + totals.regen_J;
  const half = slowing(model, HALF_frac, model.packStart_K);
  const { slowing_mps2 } = half;
  return {
    torque_Nm,
    battery_Whpkm: totals.distance_m > 0 ? totals.terminal_J / J_PER_WH / (totals.distance_m / M_PER_KM) : 0,
    regen_Wh: totals.regen_J / J_PER_WH,
    returned_frac: driving_J > 0 ? totals.regen_J / driving_J : 0,
    range_km: rangeOn(model, trace).distance_m / M_PER_KM,
    charge_A: totals.chargePeak_A,
    chargeLimit_A: model.pack.charge.peak_A,
    slowing_mps2,
    fullPack_mps2: slowing(model, 1, model.packStart_K).slowing_mps2,
    coldPack_mps2: slowing(model, HALF_frac, ZERO_CELSIUS_K).slowing_mps2,
    lamps: slowing_mps2 > LAMPS_MUST_mps2 ? "must light" : slowing_mps2 > LAMPS_MAY_mps2 ? "may light" : "off",
    ...(model.grip && {
      neededGrip_coeff: half.drivenAxle_N / gripForce_N({ ...model.grip, grip_coeff: 1 }, -slowing_mps2, 0, 1),
    }),
  };
}

/** The hardest slowing from 50 km/h on the level without the friction brakes, and the force at the driven tyres in it. */
function slowing(model: Model, soc_frac: number, pack_K: number): Slowing {
  const car = modelWith(model, { packStart_K: pack_K });
  const slowing_mps2 = greatestWhere(0, HARD_mps2, (hard) => moment(car, soc_frac, hard).brake_N <= NO_BRAKE_N);
  return { slowing_mps2, drivenAxle_N: Math.max(0, moment(car, soc_frac, slowing_mps2).wheel_N) };
}

interface Slowing {
  readonly slowing_mps2: number;
  readonly drivenAxle_N: number;
}

/** Force against the car at its tyres in a moment of slowing from 50 km/h, and the friction brakes' part of it. */
function moment(model: Model, soc_frac: number, slowing_mps2: number): { wheel_N: number; brake_N: number } {
  const from_mps = FROM_kmh * MPS_PER_KMH;
  const channels = createChannels(2);
  const trace: Trace = {
    id: "moment",
    title: "a moment of slowing",
    time_s: Float64Array.of(0, MOMENT_s),
    speed_mps: Float64Array.of(from_mps, from_mps - slowing_mps2 * MOMENT_s),
  };
  run(model, trace, channels, soc_frac);
  return { wheel_N: -channels.wheelForce_N[1], brake_N: -channels.brakeForce_N[1] };
}
