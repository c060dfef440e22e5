const GAS_JpK = 8.314;
/** Pre-exponential factor by C-rate as tabulated, in percent. [Wang2011, table 3] from memory. */
const FACTORS: readonly (readonly [rate: number, factor: number])[] = [
  [0.5, 31_630],
  [2, 21_681],
  [6, 12_934],
  [10, 15_512],
];

/**
 * Share of its capacity that an iron phosphate cell loses by cycling alone:
 *
 *   Q_loss [%] = B exp((−31700 + 370.3 C) / (R T)) · Ah^0.552      [Wang2011, eq. 9]
 *
 * with the throughput of the 2.2 Ah cell of the paper in Ah, C the C-rate, T in kelvin. Between the tabulated rates B is taken on a
 * straight line, below the least as at the least. `throughput_Ah` of another cell is to be scaled by 2.2 over its capacity (from memory).
 */
export function wangCycleLoss_frac(rate: number, temperature_K: number, throughput_Ah: number): number {
  const exponent = (-31_700 + 370.3 * rate) / (GAS_JpK * temperature_K);
  return (factorAt(rate) * Math.exp(exponent) * throughput_Ah ** 0.552) / 100;
}

/** Capacity of the cell that the law was found on, in ampere-hours. */
export const WANG_CELL_Ah = 2.2;

function factorAt(rate: number): number {
  for (let i = 1; i < FACTORS.length; i++) {
    const [low, atLow] = FACTORS[i - 1];
    const [high, atHigh] = FACTORS[i];
    if (rate <= high) return atLow + (Math.max(0, rate - low) / (high - low)) * (atHigh - atLow);
  }
  return FACTORS[FACTORS.length - 1][1];
}
