import { greatestCharge_W, greatestDischarge_W } from "../battery/terminalCurrent.ts";
import { lookUp } from "../math/uniformTable.ts";
import type { CurrentLimit, Heat, Model } from "./model.ts";
import type { Interval, State } from "./state.ts";

/**
 * Sets what holds for a whole interval from the state at its start: open-circuit voltage and resistances, what the pack gives and
 * takes at most, the accessories it can feed, how far heat holds the motor back, the gear.
 *
 * The peak current is what leaves the budget unspent at the interval's end: I² = continuous² + (budget − used)/dt, at most the
 * peak (assumed: modules' makers print currents for durations, not the law between them; this one keeps to both figures).
 */
export function beginInterval(model: Model, state: State, interval: Interval, gearBy_mps: number, dt_s: number): void {
  const { pack } = model;
  const openCircuit_V = lookUp(pack.openCircuit_V, state.soc_frac);
  const cells_ohm = lookUp(pack.resistance_ohm, state.soc_frac) * lookUp(pack.resistance_ratio, state.pack_K);
  const discharge_ohm = cells_ohm + pack.leads_ohm;
  const charge_ohm = cells_ohm * pack.charging_ratio + pack.leads_ohm;

  const cool_A = currentWithin_A(pack.discharge, state.dischargeUse_A2s, dt_s);
  const coolDischarge_W = greatestDischarge_W(openCircuit_V, discharge_ohm, cool_A, pack.min_V);
  const derate_frac = derating_frac(pack.heat, state.pack_K);
  const discharge_W =
    derate_frac < 1
      ? greatestDischarge_W(openCircuit_V, discharge_ohm, derate_frac * cool_A, pack.min_V)
      : coolDischarge_W;

  const cold_frac = share(state.pack_K, pack.coldChargeNone_K, pack.coldChargeFull_K);
  const charge_A = derate_frac * cold_frac * currentWithin_A(pack.charge, state.chargeUse_A2s, dt_s);
  // No more than brings the pack to the charge that braking may take it to by the interval's end.
  const room_A = ((pack.regenTo_frac - state.soc_frac) * pack.capacity_C) / dt_s;
  const charge_W = room_A > 0 ? greatestCharge_W(openCircuit_V, charge_ohm, Math.min(charge_A, room_A), pack.max_V) : 0;

  interval.dt_s = dt_s;
  interval.openCircuit_V = openCircuit_V;
  interval.discharge_ohm = discharge_ohm;
  interval.charge_ohm = charge_ohm;
  interval.coolDischarge_W = coolDischarge_W;
  interval.discharge_W = discharge_W;
  interval.charge_W = charge_W;
  interval.accessories_W = Math.min(model.accessories_W, discharge_W);
  interval.motorDerate_frac = derating_frac(model.motor.heat, state.motor_K);
  interval.gear = gearFor(model.gearUp_mps, 0.5 * (state.speed_mps + gearBy_mps));
}

/** The share of full that is left at x between where none is left and where all is; a jump at `none` where the two meet. */
export function share(x: number, none: number, full: number): number {
  if (x <= none) return 0;
  if (x >= full) return 1;
  return (x - none) / (full - none);
}

function derating_frac(heat: Heat, temperature_K: number): number {
  return 1 - share(temperature_K, heat.derateFrom_K, heat.derateTo_K);
}

function currentWithin_A(limit: CurrentLimit, used_A2s: number, dt_s: number): number {
  const { continuous_A, peak_A } = limit;
  const beyond_A2 = Math.max(0, limit.budget_A2s - used_A2s) / dt_s;
  const squared_A2 = continuous_A * continuous_A + beyond_A2;
  return squared_A2 >= peak_A * peak_A ? peak_A : Math.sqrt(squared_A2);
}

function gearFor(gearUp_mps: Float64Array, mean_mps: number): number {
  let gear = 0;
  while (gear < gearUp_mps.length && mean_mps > gearUp_mps[gear]) gear++;
  return gear;
}
