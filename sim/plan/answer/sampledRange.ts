import { quantileSorted } from "d3-array";
import type { Band } from "./band.ts";

/** The ranges of a pack over many variants of what is not known, rising. */
export interface SampledRange {
  readonly ranges_km: readonly number[];
}

/** A band lies between these shares of the variants: nine of ten. */
const [LEAST, MOST] = [0.05, 0.95];

/** The band of a range as taken: nine of ten of its variants, and the value itself. */
export function sampledBand(value: number, { ranges_km }: SampledRange): Band {
  const at = (share: number) => quantileSorted([...ranges_km], share) ?? value;
  return { value, low: Math.min(value, at(LEAST)), high: Math.max(value, at(MOST)) };
}

/** Share of the variants that come home from a day. */
export function homeShare({ ranges_km }: SampledRange, day_km: number): number {
  return ranges_km.filter((range_km) => range_km >= day_km).length / ranges_km.length;
}
