import type { Band } from "./band.ts";

/** The ranges of a pack over many variants of what is not known, rising. */
export interface SampledRange {
  readonly ranges_km: readonly number[];
}

/** A band lies between these shares of the variants: nine of ten. */
const [LEAST, MOST] = [0.05, 0.95];

/** The band of a range as taken: nine of ten of its variants, and the value itself. */
export function sampledBand(value: number, { ranges_km }: SampledRange): Band {
  return { value, low: Math.min(value, atShare(ranges_km, LEAST)), high: Math.max(value, atShare(ranges_km, MOST)) };
}

/** The value below which a share of rising ones lies, on a straight line between its neighbours. The page's first script has no room for a library. */
function atShare(rising: readonly number[], share: number): number {
  const place = share * (rising.length - 1);
  const below = Math.floor(place);
  const above = Math.min(below + 1, rising.length - 1);
  return rising[below] + (place - below) * (rising[above] - rising[below]);
}

/** Share of the variants that come home from a day. */
export function homeShare({ ranges_km }: SampledRange, day_km: number): number {
  return ranges_km.filter((range_km) => range_km >= day_km).length / ranges_km.length;
}
