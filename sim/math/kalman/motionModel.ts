/**
 * A linear model of something that moves and is measured now and then, told to the smoother one event at a time.
 * All axes share transition, noise and measurement rows, and so one covariance: east and north, say.
 */
export interface MotionModel {
  readonly states: number;
  readonly axes: number;
  readonly events: number;
  /** Variances of the states before the first event (row-major matrix), and their means per axis. */
  readonly startCovariance: Float64Array;
  readonly startMean: Float64Array;
  /** Fills the transition from event k - 1 to event k and its noise, both row-major and zero on entry. */
  transition(k: number, transition: Float64Array, noise: Float64Array): void;
  /** Calls `observe` for each measurement at event k: its row, its variance, and its value for each axis. */
  measure(k: number, observe: (row: Float64Array, variance: number, values: Float64Array) => void): void;
}
