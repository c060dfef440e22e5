import { type HeatFactors, warmed_K } from "../math/heatLump.ts";
import { budgetUsed_A2s } from "./currentLimit.ts";
import type { PackModel, PackState } from "./packModel.ts";

/** Whether a current held for a time takes a pack to its floor. */
export function meetsFloor(pack: PackModel, state: PackState, current_A: number, dt_s: number): boolean {
  const used_frac = (current_A * dt_s) / pack.capacity_C;
  return used_frac > 0 && used_frac >= state.soc_frac - pack.floor_frac;
}

/** Time until a discharging current takes a pack to its floor, in seconds; none where it is there. Charge falls straight, so it is exact. */
export function timeToFloor_s(pack: PackModel, state: PackState, current_A: number): number {
  return (Math.max(0, state.soc_frac - pack.floor_frac) * pack.capacity_C) / current_A;
}

/** Moves a pack's charge, temperature and peak budgets on by a time at a steady current against a resistance, leads included. */
export function advancePack(
  pack: PackModel,
  state: PackState,
  heat: HeatFactors,
  current_A: number,
  resistance_ohm: number,
  ambient_K: number,
  dt_s: number,
): void {
  // Leads warm the air, not the cells.
  const cells_W = current_A * current_A * (resistance_ohm - pack.leads_ohm);
  state.soc_frac -= (current_A * dt_s) / pack.capacity_C;
  state.temperature_K = warmed_K(pack.heat, heat, state.temperature_K, cells_W, ambient_K, dt_s);
  state.dischargeUse_A2s = budgetUsed_A2s(pack.discharge, state.dischargeUse_A2s, Math.max(0, current_A), dt_s);
  state.chargeUse_A2s = budgetUsed_A2s(pack.charge, state.chargeUse_A2s, Math.max(0, -current_A), dt_s);
}
