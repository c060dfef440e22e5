import { lookUp } from "../math/uniformTable.ts";
import type { Trace } from "../trace/trace.ts";
import type { Channels } from "./channels.ts";
import type { Interval } from "./interval.ts";
import type { RunContext } from "./runContext.ts";

/** What the intervals of one row add up to: sums over time, from which the row's means are made. Scratch space, made once a run. */
export interface Row {
  time_s: number;
  wheel_Ns: number;
  brake_Ns: number;
  motor_rad: number;
  motor_Nms: number;
  loss_J: number;
  controller_J: number;
  battery_C: number;
  battery_Vs: number;
  battery_J: number;
  /** Last limit that held the car back in the row; index into LIMITS. */
  limit: number;
}

export function createRow(): Row {
  return {
    time_s: 0,
    wheel_Ns: 0,
    brake_Ns: 0,
    motor_rad: 0,
    motor_Nms: 0,
    loss_J: 0,
    controller_J: 0,
    battery_C: 0,
    battery_Vs: 0,
    battery_J: 0,
    limit: 0,
  };
}

/** Empties the sums for the next row. */
export function beginRow(row: Row): void {
  row.time_s = 0;
  row.wheel_Ns = 0;
  row.brake_Ns = 0;
  row.motor_rad = 0;
  row.motor_Nms = 0;
  row.loss_J = 0;
  row.controller_J = 0;
  row.battery_C = 0;
  row.battery_Vs = 0;
  row.battery_J = 0;
  row.limit = 0;
}

/** Adds what was driven of an interval to the row's sums. */
export function addToRow(row: Row, interval: Interval): void {
  const { driven_s } = interval;
  row.time_s += driven_s;
  row.wheel_Ns += interval.wheel_N * driven_s;
  row.brake_Ns += interval.brake_N * driven_s;
  row.motor_rad += interval.motor_radps * driven_s;
  row.motor_Nms += interval.motor_Nm * driven_s;
  row.loss_J += interval.loss_W * driven_s;
  row.controller_J += interval.controller_W * driven_s;
  row.battery_C += interval.current_A * driven_s;
  row.battery_Vs += interval.terminal_V * driven_s;
  row.battery_J += interval.terminal_V * interval.current_A * driven_s;
  if (interval.limit !== 0) row.limit = interval.limit;
}

/** Row 0: the car as it stands before it drives. What is nought there, time and distance first, is never written. */
export function recordStart(out: Channels, { state, model }: RunContext, trace: Trace): void {
  out.length = 1;
  out.target_mps[0] = trace.speed_mps[0];
  out.speed_mps[0] = state.speed_mps;
  out.elevation_m[0] = state.elevation_m;
  out.battery_V[0] = lookUp(model.pack.openCircuit_V, state.pack.soc_frac);
  out.soc_frac[0] = state.pack.soc_frac;
  out.motor_K[0] = state.motor_K;
  out.pack_K[0] = state.pack.temperature_K;
}

/** Row i: means over the time since row i - 1, as far as it was driven, and the state at its end. */
export function recordRow(out: Channels, context: RunContext, i: number, time_s: number, target_mps: number): void {
  const { state, start, model } = context;
  const { row } = context.scratch;
  const perSecond = row.time_s > 0 ? 1 / row.time_s : 0;
  // No number where the car stood, and then no gradient.
  const sinSlope = (state.elevation_m - out.elevation_m[i - 1]) / (state.distance_m - out.distance_m[i - 1]);
  out.length = i + 1;
  out.time_s[i] = time_s;
  out.distance_m[i] = state.distance_m;
  out.target_mps[i] = target_mps;
  out.speed_mps[i] = state.speed_mps;
  out.grade_ratio[i] = Math.abs(sinSlope) < 1 ? sinSlope / Math.sqrt(1 - sinSlope * sinSlope) : 0;
  out.elevation_m[i] = state.elevation_m;
  out.wheelForce_N[i] = row.wheel_Ns * perSecond;
  out.brakeForce_N[i] = row.brake_Ns * perSecond;
  out.gear[i] = start.gear;
  out.motorSpeed_radps[i] = row.motor_rad * perSecond;
  out.motorTorque_Nm[i] = row.motor_Nms * perSecond;
  out.motorLoss_W[i] = row.loss_J * perSecond;
  out.controller_W[i] = row.controller_J * perSecond;
  out.battery_A[i] = row.battery_C * perSecond;
  out.battery_V[i] =
    row.time_s > 0 ? row.battery_Vs * perSecond : lookUp(model.pack.openCircuit_V, state.pack.soc_frac);
  out.battery_W[i] = row.battery_J * perSecond;
  out.soc_frac[i] = state.pack.soc_frac;
  out.motor_K[i] = state.motor_K;
  out.pack_K[i] = state.pack.temperature_K;
  out.limit[i] = row.limit;
}
