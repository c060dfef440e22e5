/** One way from a regime at one event to a regime at the next. All matrices are row-major. */
export interface Passage {
  readonly transition: Float64Array;
  /** Added to the transition's result. */
  readonly shift: Float64Array;
  readonly noise: Float64Array;
  /**
   * What the passage is gated by, y = gateRow x, from before it: it is taken as likely as y + gateSpread e, e of the standard normal
   * distribution, lies on the side given of gateLevel, 1 above and -1 below; 0 is no gate.
   */
  gateSide: -1 | 0 | 1;
  readonly gateRow: Float64Array;
  gateLevel: number;
  gateSpread: number;
}

/** Takes one scalar measurement in: what it sees of the states, its variance, its value. */
export type Observe = (row: Float64Array, variance: number, value: number) => void;

/**
 * A linear Gaussian model whose matrices switch between a few regimes by chance, given to the filter one event at a time: the
 * regime is a Markov chain, and within a regime the states move and are measured as in Kalman's filter.
 */
export interface SwitchingModel {
  readonly states: number;
  readonly regimes: number;
  readonly events: number;
  /** Probability of each regime before the first event, and mean and covariance of the states, the same in each. */
  readonly startWeight: Float64Array;
  readonly startMean: Float64Array;
  readonly startCovariance: Float64Array;
  /** A state that is never negative in a regime; -1 for none. */
  positiveState(regime: number): number;
  /** Fills the way between two regimes up to event k, all zero on entry, and returns its probability; 0 where there is none. */
  passage(k: number, from: number, to: number, fill: Passage): number;
  /** Calls `observe` for each measurement at event k. */
  measure(k: number, observe: Observe): void;
}
