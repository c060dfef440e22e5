import type { LimitedHeat } from "../math/heatLump.ts";
import type { UniformTable } from "../math/uniformTable.ts";
import type { CurrentLimit } from "./currentLimit.ts";

/** A pack in SI, ready for look-up. Never changes during a run. */
export interface PackModel {
  readonly capacity_C: number;
  readonly openCircuit_V: UniformTable;
  /** Of the modules at 25 degC when discharging; leads apart. */
  readonly resistance_ohm: UniformTable;
  readonly resistance_ratio: UniformTable;
  readonly charging_ratio: number;
  readonly leads_ohm: number;
  readonly discharge: CurrentLimit;
  readonly charge: CurrentLimit;
  readonly coldChargeNone_K: number;
  readonly coldChargeFull_K: number;
  readonly min_V: number;
  readonly max_V: number;
  /** Charge that a charger leaves, where a drive begins. */
  readonly ceiling_frac: number;
  /** Charge above which braking may not charge the pack. */
  readonly regenTo_frac: number;
  readonly floor_frac: number;
  readonly heat: LimitedHeat;
}

/** The same pack with other parts, in the same shape. */
export function packWith(pack: PackModel, parts: Partial<PackModel>): PackModel {
  return {
    capacity_C: parts.capacity_C ?? pack.capacity_C,
    openCircuit_V: parts.openCircuit_V ?? pack.openCircuit_V,
    resistance_ohm: parts.resistance_ohm ?? pack.resistance_ohm,
    resistance_ratio: parts.resistance_ratio ?? pack.resistance_ratio,
    charging_ratio: parts.charging_ratio ?? pack.charging_ratio,
    leads_ohm: parts.leads_ohm ?? pack.leads_ohm,
    discharge: parts.discharge ?? pack.discharge,
    charge: parts.charge ?? pack.charge,
    coldChargeNone_K: parts.coldChargeNone_K ?? pack.coldChargeNone_K,
    coldChargeFull_K: parts.coldChargeFull_K ?? pack.coldChargeFull_K,
    min_V: parts.min_V ?? pack.min_V,
    max_V: parts.max_V ?? pack.max_V,
    ceiling_frac: parts.ceiling_frac ?? pack.ceiling_frac,
    regenTo_frac: parts.regenTo_frac ?? pack.regenTo_frac,
    floor_frac: parts.floor_frac ?? pack.floor_frac,
    heat: parts.heat ?? pack.heat,
  };
}

/** What a pack carries from one interval to the next. */
export interface PackState {
  soc_frac: number;
  temperature_K: number;
  /** How much of the peak budgets is used up. */
  dischargeUse_A2s: number;
  chargeUse_A2s: number;
}
