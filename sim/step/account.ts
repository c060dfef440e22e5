import { meshLoss_N } from "../vehicle/gear.ts";
import { type RunContext, servedHeater_W } from "./runContext.ts";
import type { Totals } from "./totals.ts";

/**
 * Adds the part of the interval that was driven to the totals. Every entry comes from its own force over the distance or its own power
 * over the time. The extremes are those of the interval, and those of the state at its end, to which `integrate` has brought it.
 */
export function account({ model, start, state, interval }: RunContext, totals: Totals): void {
  const { current_A, motor_radps, driven_s, driven_m } = interval;
  const gear = model.gears[start.gear];

  const { ledger } = totals;
  ledger.aero_J += interval.drag_N * driven_m;
  ledger.rolling_J += interval.rolling_N * driven_m;
  ledger.climb_J += interval.climb_N * driven_m;
  ledger.speed_J += interval.inertia_N * driven_m + interval.rotor_Nm * motor_radps * driven_s;
  ledger.driveline_J +=
    (model.road.wheelDrag_N + meshLoss_N(gear, interval.driveline_N)) * driven_m +
    model.noLoadDrag_Nm * motor_radps * driven_s;
  ledger.motor_J += interval.loss_W * driven_s;
  ledger.packHeat_J += current_A * current_A * interval.resistance_ohm * driven_s;
  ledger.accessories_J += start.accessories_W * driven_s;
  ledger.frictionBrake_J -= interval.brake_N * driven_m;
  ledger.total_J += start.pack.openCircuit_V * current_A * driven_s;

  totals.time_s += driven_s;
  totals.distance_m += driven_m;
  if (interval.wheel_N > 0) totals.wheelPositive_J += interval.wheel_N * driven_m;
  totals.terminal_J += interval.terminal_V * current_A * driven_s;
  if (interval.controller_W < 0) totals.regen_J -= interval.controller_W * driven_s;
  totals.shed_J += (start.wanted_W - start.accessories_W) * driven_s;
  totals.heater_J += servedHeater_W(start) * driven_s;
  totals.current_A2s += current_A * current_A * driven_s;
  totals.limited_s[interval.limit] += driven_s;

  const { motor_Nm } = interval;
  const shaft_W = motor_Nm * motor_radps;
  const end_radps = state.speed_mps * gear.motor_radpm;
  if (current_A > totals.dischargePeak_A) totals.dischargePeak_A = current_A;
  if (-current_A > totals.chargePeak_A) totals.chargePeak_A = -current_A;
  if (motor_Nm > totals.motorPeak_Nm) totals.motorPeak_Nm = motor_Nm;
  if (shaft_W > totals.motorPeak_W) totals.motorPeak_W = shaft_W;
  if (end_radps > totals.motorPeak_radps) totals.motorPeak_radps = end_radps;
  if (interval.terminal_V < totals.lowest_V) totals.lowest_V = interval.terminal_V;
  if (state.pack.soc_frac < totals.lowestSoc_frac) totals.lowestSoc_frac = state.pack.soc_frac;
  if (state.motor_K > totals.hottestMotor_K) totals.hottestMotor_K = state.motor_K;
  if (state.pack.temperature_K > totals.hottestPack_K) totals.hottestPack_K = state.pack.temperature_K;
}
