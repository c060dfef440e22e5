import { warmed_K } from "../math/heatLump.ts";
import type { CurrentLimit } from "./model.ts";
import type { Work } from "./state.ts";
import type { Totals } from "./totals.ts";

/**
 * Adds the interval worked out in `work` to the totals, for `moved_s` seconds of it, and moves the state on. Where the state of charge
 * would pass the floor, the interval is cut in proportion and the totals say so. Comes back with the seconds booked.
 *
 * Every entry comes from its own force over the distance or its own power over the time.
 */
export function book(work: Work, totals: Totals, moved_s: number): number {
  const { model, state, interval } = work;
  const { pack } = model;
  const { current_A } = interval;
  const used_frac = (current_A * moved_s) / pack.capacity_C;
  const toFloor_frac = state.soc_frac - pack.floor_frac;
  const isCut = used_frac > 0 && used_frac >= toFloor_frac;
  const part_frac = isCut ? Math.max(0, toFloor_frac / used_frac) : 1;
  const booked_s = part_frac * moved_s;
  const distance_m = part_frac * interval.distance_m;

  const { ledger } = totals;
  const resistance_ohm = current_A >= 0 ? interval.discharge_ohm : interval.charge_ohm;
  const heat_W = current_A * current_A * resistance_ohm;
  const gear = model.gears[interval.gear];
  // Lost between gearbox input and tyre: the tyre gets less when driving, the input gets less on the overrun.
  const geared_N =
    interval.driveline_N >= 0
      ? interval.driveline_N * (1 / gear.efficiency_frac - 1)
      : -interval.driveline_N * (1 - gear.efficiency_frac);
  const dragged_Nm = interval.motor_radps > 0 ? model.noLoadDrag_Nm : 0;
  ledger.aero_J += interval.drag_N * distance_m;
  ledger.rolling_J += interval.rolling_N * distance_m;
  ledger.climb_J += interval.climb_N * distance_m;
  ledger.speed_J += interval.inertia_N * distance_m + interval.rotor_Nm * interval.motor_radps * booked_s;
  ledger.driveline_J += (model.road.wheelDrag_N + geared_N) * distance_m + dragged_Nm * interval.motor_radps * booked_s;
  ledger.motor_J += interval.loss_W * booked_s;
  ledger.packHeat_J += heat_W * booked_s;
  ledger.accessories_J += interval.accessories_W * booked_s;
  ledger.frictionBrake_J -= interval.brake_N * distance_m;
  ledger.total_J += interval.openCircuit_V * current_A * booked_s;

  totals.time_s += booked_s;
  totals.distance_m += distance_m;
  if (interval.wheel_N > 0) totals.wheelPositive_J += interval.wheel_N * distance_m;
  totals.terminal_J += interval.terminal_V * current_A * booked_s;
  if (interval.controller_W < 0) totals.regen_J -= interval.controller_W * booked_s;
  totals.shed_J += (model.accessories_W - interval.accessories_W) * booked_s;
  totals.current_A2s += current_A * current_A * booked_s;
  totals.limited_s[interval.limit] += booked_s;

  state.distance_m += distance_m;
  state.speed_mps = isCut ? state.speed_mps + part_frac * (interval.end_mps - state.speed_mps) : interval.end_mps;
  state.soc_frac = isCut ? pack.floor_frac : state.soc_frac - used_frac;
  // Leads warm the air, not the cells.
  const cells_W = current_A * current_A * (resistance_ohm - pack.leads_ohm);
  state.pack_K = warmed_K(pack.heat, work.packHeat, state.pack_K, cells_W, model.ambient_K, booked_s);
  state.motor_K = warmed_K(model.motor.heat, work.motorHeat, state.motor_K, interval.loss_W, model.ambient_K, booked_s);
  state.dischargeUse_A2s = used_A2s(pack.discharge, state.dischargeUse_A2s, Math.max(0, current_A), booked_s);
  state.chargeUse_A2s = used_A2s(pack.charge, state.chargeUse_A2s, Math.max(0, -current_A), booked_s);

  const shaft_W = interval.motor_Nm * interval.motor_radps;
  if (current_A > totals.dischargePeak_A) totals.dischargePeak_A = current_A;
  if (-current_A > totals.chargePeak_A) totals.chargePeak_A = -current_A;
  if (interval.motor_Nm > totals.motorPeak_Nm) totals.motorPeak_Nm = interval.motor_Nm;
  if (shaft_W > totals.motorPeak_W) totals.motorPeak_W = shaft_W;
  const end_radps = state.speed_mps * gear.motor_radpm;
  if (end_radps > totals.motorPeak_radps) totals.motorPeak_radps = end_radps;
  if (interval.terminal_V < totals.lowest_V) totals.lowest_V = interval.terminal_V;
  if (state.soc_frac < totals.lowestSoc_frac) totals.lowestSoc_frac = state.soc_frac;
  if (state.motor_K > totals.hottestMotor_K) totals.hottestMotor_K = state.motor_K;
  if (state.pack_K > totals.hottestPack_K) totals.hottestPack_K = state.pack_K;
  if (isCut) totals.reachedFloor = true;
  return booked_s;
}

/** Budget of a peak current used up after a time at a current; it comes back below the continuous one. */
function used_A2s(limit: CurrentLimit, before_A2s: number, current_A: number, dt_s: number): number {
  const after_A2s = before_A2s + (current_A * current_A - limit.continuous_A * limit.continuous_A) * dt_s;
  return Math.min(limit.budget_A2s, Math.max(0, after_A2s));
}
