const ZERO_K = 273.15;

/** How a cell stands and is cycled, for a law of stresses. */
export interface StressUse {
  readonly soc_frac: number;
  readonly temperature_K: number;
  readonly time_s: number;
  /** Stresses of all its cycles, whatever their depths, added up. */
  readonly cycleStress: number;
}

/** Stress of one cycle of a depth: S_d = 1 / (1.4e5 d^−0.501 − 1.23e5); none for none. [Xu2018, eq. 22] */
export function depthStress(depth_frac: number): number {
  return depth_frac <= 0 ? 0 : 1 / (1.4e5 * depth_frac ** -0.501 - 1.23e5);
}

/** Stress of a temperature: S_T = exp(0.0693 (T − 25) · 298.15 / (T + 273.15)), T in Celsius. [Xu2018, eq. 20] */
export function temperatureStress(temperature_K: number): number {
  return Math.exp((0.0693 * (temperature_K - ZERO_K - 25) * 298.15) / temperature_K);
}

/** Stress of a state of charge: S_s = exp(1.04 (s − 0.5)). [Xu2018, eq. 19] */
export function chargeStress(soc_frac: number): number {
  return Math.exp(1.04 * (soc_frac - 0.5));
}

/**
 * Share of its capacity that a cell loses, after a film has formed on its anode first:
 *
 *   L = 1 − a e^(−b f) − (1 − a) e^(−f);  f = (4.14e-10 t + Σ S_d) S_s S_T,  a = 0.0575, b = 121      [Xu2018, eqs 7, 15-22]
 *
 * Its constants were found on manganese cells: a cross-check, since none is known for nickel.
 */
export function xuLoss_frac({ soc_frac, temperature_K, time_s, cycleStress }: StressUse): number {
  const aged = (4.14e-10 * time_s + cycleStress) * chargeStress(soc_frac) * temperatureStress(temperature_K);
  const film_frac = 0.0575;
  return 1 - film_frac * Math.exp(-121 * aged) - (1 - film_frac) * Math.exp(-aged);
}
