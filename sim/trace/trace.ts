import type { Spread } from "../../shared/spread.ts";

/** Height along a road. `distance_m` rises from 0, same length as `elevation_m`; straight lines between. */
export interface Profile {
  readonly distance_m: Float64Array;
  readonly elevation_m: Float64Array;
}

/**
 * A target speed against time, and where known the height against distance along the road.
 * `time_s` rises strictly from 0; `speed_mps` is finite and not negative; both have the same length, at least two.
 * Made by the readers of `sim/trace` and `sim/route`, which check all of that; nothing behind them checks again.
 */
export interface Trace {
  readonly id: string;
  readonly title: string;
  readonly time_s: Float64Array;
  readonly speed_mps: Float64Array;
  readonly profile?: Profile;
  /** How far the log behind it leaves the road open. */
  readonly spread?: Spread;
  /** What was put before and after a recorded road that did not begin and end at rest. */
  readonly restAdded?: RestAdded;
}

/** Pieces put before and after a trace that does not begin and end at rest. All 0 where nothing was put there. */
export interface RestAdded {
  /** Speed the trace itself begins with, and how long and how far the piece up to it is. */
  readonly start_mps: number;
  readonly before_s: number;
  readonly before_m: number;
  /** Speed the trace itself ends with, and the piece down from it. */
  readonly end_mps: number;
  readonly after_s: number;
  readonly after_m: number;
}
