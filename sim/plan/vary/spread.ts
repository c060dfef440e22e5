import { quantileSorted } from "d3-array";
import { sampleRankCorrelation } from "simple-statistics";

/** How a result is spread over the variants. */
export interface Spread {
  readonly mean: number;
  readonly p5: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p95: number;
}

/** Mean and percentiles of some values, straight lines between those that stand next to each other in order; at least one of them. */
export function spreadOf(values: readonly number[]): Spread {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share_frac: number) => quantileSorted(sorted, share_frac) ?? Number.NaN;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return { mean, p5: at(0.05), p25: at(0.25), p50: at(0.5), p75: at(0.75), p95: at(0.95) };
}

/** How one input goes with a result. */
export interface Influence {
  /** Spearman's: 1 where the result always rises with it, -1 where it always falls, near 0 where others decide. */
  readonly rank_coeff: number;
  /** Share of the result's spread that would be left were this input known, all others as open as they are. */
  readonly left_frac: number;
}

/**
 * The influence of an input on a result over the variants; of inputs that are independent of one another and go nearly straight into the
 * result, knowing one leaves √(1 - ρ²) of its spread                                            [SaltelliEtAl2008, ch. 1]
 */
export function influenceOf(input: readonly number[], result: readonly number[]): Influence {
  const isFlat = (values: readonly number[]) => values.every((value) => value === values[0]);
  const rank_coeff = isFlat(input) || isFlat(result) ? 0 : sampleRankCorrelation([...input], [...result]);
  return { rank_coeff, left_frac: Math.sqrt(Math.max(0, 1 - rank_coeff * rank_coeff)) };
}
