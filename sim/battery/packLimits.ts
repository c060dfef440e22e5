import { derating_frac } from "../math/heatLump.ts";
import { share } from "../math/share.ts";
import { lookUp } from "../math/uniformTable.ts";
import { currentWithin_A } from "./currentLimit.ts";
import type { PackModel, PackState } from "./packModel.ts";
import { greatestCharge_W, greatestDischarge_W } from "./terminalCurrent.ts";

/** What holds of a pack for a whole interval, set from its state at the start. */
export interface PackLimits {
  openCircuit_V: number;
  discharge_ohm: number;
  charge_ohm: number;
  /** Most the pack gives in this interval, and what it would give were it cool. */
  discharge_W: number;
  coolDischarge_W: number;
  /** Most the pack takes, as a number not above zero. */
  charge_W: number;
}

/** Limits of no interval yet. */
export function createPackLimits(): PackLimits {
  return { openCircuit_V: 0, discharge_ohm: 0, charge_ohm: 0, discharge_W: 0, coolDischarge_W: 0, charge_W: 0 };
}

/**
 * Writes into `limits` what the pack gives and takes at most over `dt_s`: within current, voltage and peak budget, less where it is
 * warm; charge also less where its cells are cold, and no more than brings it to the charge that braking may take it to by the interval's end.
 */
export function setPackLimits(limits: PackLimits, pack: PackModel, state: PackState, dt_s: number): void {
  const { soc_frac, temperature_K } = state;
  const openCircuit_V = lookUp(pack.openCircuit_V, soc_frac);
  const cells_ohm = lookUp(pack.resistance_ohm, soc_frac) * lookUp(pack.resistance_ratio, temperature_K);
  const discharge_ohm = cells_ohm + pack.leads_ohm;
  const charge_ohm = cells_ohm * pack.charging_ratio + pack.leads_ohm;

  const warm_frac = derating_frac(pack.heat, temperature_K);
  const cool_A = currentWithin_A(pack.discharge, state.dischargeUse_A2s, dt_s);
  const coolDischarge_W = greatestDischarge_W(openCircuit_V, discharge_ohm, cool_A, pack.min_V);
  const discharge_W =
    warm_frac < 1 ? greatestDischarge_W(openCircuit_V, discharge_ohm, warm_frac * cool_A, pack.min_V) : coolDischarge_W;

  const cold_frac = share(temperature_K, pack.coldChargeNone_K, pack.coldChargeFull_K);
  const charge_A = warm_frac * cold_frac * currentWithin_A(pack.charge, state.chargeUse_A2s, dt_s);
  const toFull_A = ((pack.regenTo_frac - soc_frac) * pack.capacity_C) / dt_s;
  const charge_W =
    toFull_A > 0 ? greatestCharge_W(openCircuit_V, charge_ohm, Math.min(charge_A, toFull_A), pack.max_V) : 0;

  limits.openCircuit_V = openCircuit_V;
  limits.discharge_ohm = discharge_ohm;
  limits.charge_ohm = charge_ohm;
  limits.discharge_W = discharge_W;
  limits.coolDischarge_W = coolDischarge_W;
  limits.charge_W = charge_W;
}
