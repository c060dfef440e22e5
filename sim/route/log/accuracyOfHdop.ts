import { bounded, fixBounds } from "./fixBounds.ts";

/** Usual error of one receiver's range, so that dilution times this is a standard deviation: assumed, common practice. */
const RANGE_ERROR_m = 3;

/** Standard deviation of a position per axis in metres, from its horizontal dilution of precision; NaN where there is none. */
export function accuracyOfHdop_m(hdop: number | null): number {
  return bounded(hdop, fixBounds.hdop) * RANGE_ERROR_m;
}
