/** A scale of kilometres or miles left on coming home, from a round number below to one above. */
export interface LeftAxis {
  readonly from: number;
  readonly to: number;
  /** Where lines and figures stand; nought is among them. */
  readonly ticks: readonly number[];
}

/**
 * An axis that holds all values and nought with some room on either side, its ticks a round step apart and not more than `most`.
 * What lies more than three quarters of the largest value below nought is left out: it is shown by an arrow.
 */
export function leftAxis(values: readonly number[], most = 8): LeftAxis {
  const top = Math.max(10, ...values);
  const bottom = Math.min(-0.06 * top, Math.max(Math.min(0, ...values), -0.75 * top));
  const rough = (top - bottom) / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((one) => one * power >= rough) ?? 10);
  const from = bottom - 0.03 * (top - bottom);
  const to = top + 0.05 * (top - bottom);
  const ticks: number[] = [];
  for (let k = Math.ceil(from / step); k * step <= to; k++) ticks.push(k * step + 0);
  return { from, to, ticks };
}
