const GAS_JpK = 8.3145;
const REFERENCE_K = 298.15;

/**
 * Share of its capacity that an iron phosphate cell loses by standing:
 *
 *   loss = k_T k_SOC √t;  k_T = 1.2571e-5 exp(−17126/R (1/T − 1/298.15));  k_SOC = 2.8575 (SOC − 0.5)³ + 0.60225      [Naumann2018, eqs 4-6]
 *
 * t in seconds. The activation energy and the unit of time are from memory.
 */
export function naumannCalendarLoss_frac(soc_frac: number, temperature_K: number, time_s: number): number {
  const byTemperature = 1.2571e-5 * Math.exp((-17_126 / GAS_JpK) * (1 / temperature_K - 1 / REFERENCE_K));
  return byTemperature * (2.8575 * (soc_frac - 0.5) ** 3 + 0.60225) * Math.sqrt(time_s);
}

/**
 * Share of its capacity that an iron phosphate cell loses by cycling:
 *
 *   loss [%] = (0.0630 C + 0.0971)(4.0253 (DOD − 0.6)³ + 1.0923) √FEC      [Naumann2020, eqs 3-5] from memory
 *
 * with C the C-rate, DOD the depth of a cycle, FEC the count of full equivalent cycles.
 */
export function naumannCycleLoss_frac(rate: number, depth_frac: number, fullCycles: number): number {
  return ((0.063 * rate + 0.0971) * (4.0253 * (depth_frac - 0.6) ** 3 + 1.0923) * Math.sqrt(fullCycles)) / 100;
}
