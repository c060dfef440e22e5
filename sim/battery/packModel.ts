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

/** What a pack carries from one interval to the next. */
export interface PackState {
  soc_frac: number;
  temperature_K: number;
  /** How much of the peak budgets is used up. */
  dischargeUse_A2s: number;
  chargeUse_A2s: number;
}
