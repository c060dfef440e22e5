/** Capacity of the cell that the law was found on, in ampere-hours. */
export const SCHMALSTIEG_CELL_Ah = 2.05;

/** What ages a nickel cell: how it stands and how it is cycled. */
export interface NickelUse {
  /** Standing, open-circuit. */
  readonly standing_V: number;
  readonly temperature_K: number;
  readonly time_days: number;
  /** Mean open-circuit voltage of the cycles, and their depth. */
  readonly mean_V: number;
  readonly depth_frac: number;
  /** Charge in and out, for a cell of 2.05 Ah. */
  readonly throughput_Ah: number;
}

/**
 * Capacity and resistance of a nickel cell over those when new:
 *
 *   C/C0 = 1 − a t^0.75 − b √Q;  R/R0 = 1 + a_R t^0.75 + b_R Q      [Schmalstieg2014, eqs 18-23]
 *   a = (7.543 V − 23.75)·10⁶ exp(−6976/T);  b = 7.348e-3 (V̄ − 3.667)² + 7.60e-4 + 4.081e-3 DOD
 *   a_R = (5.270 V − 16.32)·10⁵ exp(−5986/T);  b_R = 2.153e-4 (V̄ − 3.725)² − 1.521e-5 + 2.798e-4 DOD (its tail from memory)
 *
 * t in days, Q in Ah. Below 3.149 V, where the law would make a cell younger, standing costs nothing; nor does any term make it better.
 */
export function schmalstieg(use: NickelUse): { readonly capacity_frac: number; readonly resistance_ratio: number } {
  const { standing_V, temperature_K, time_days, mean_V, depth_frac, throughput_Ah } = use;
  const stood = time_days ** 0.75;
  const a = Math.max(0, 7.543 * standing_V - 23.75) * 1e6 * Math.exp(-6976 / temperature_K);
  const aOfResistance = Math.max(0, 5.27 * standing_V - 16.32) * 1e5 * Math.exp(-5986 / temperature_K);
  const b = 7.348e-3 * (mean_V - 3.667) ** 2 + 7.6e-4 + 4.081e-3 * depth_frac;
  const bOfResistance = Math.max(0, 2.153e-4 * (mean_V - 3.725) ** 2 - 1.521e-5 + 2.798e-4 * depth_frac);
  return {
    capacity_frac: 1 - a * stood - b * Math.sqrt(throughput_Ah),
    resistance_ratio: 1 + aOfResistance * stood + bOfResistance * throughput_Ah,
  };
}
