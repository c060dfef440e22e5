import type { Band } from "../../../../shared/spread.ts";

/** A piece of the drive between two standstills, and what each draw needs for it. Rows count from the segment's or the series' start. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  /** The draw that was taken. */
  readonly chosen: number;
  readonly energy_J: Float64Array;
  readonly distance_m: Float64Array;
  readonly climb_m: Float64Array;
  /** How often each draw moves, from rest to rest. */
  readonly goes: Float64Array;
}

/** What road and air ask of a car, for telling draws apart: force = f0 + f1 v + f2 v^2. */
export interface RoadLoadTerms {
  readonly mass_kg: number;
  readonly f0_N: number;
  readonly f1_Npmps: number;
  readonly f2_Npmps2: number;
}

/** Stops on the way, and the range that holds eight in ten. */
export interface Stops {
  /** Of the drive that was taken. */
  readonly taken: number;
  /** With those that a thin log does not show: of how many it is silent is known, not where they are. */
  readonly likely: number;
  readonly band: Band;
}

/** What the model itself leaves out, as shares: half the width of a band of 80 %. */
export interface Unmodelled {
  readonly energy_frac: number;
  readonly distance_frac: number;
  readonly stops_frac: number;
}
