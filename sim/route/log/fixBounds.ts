/** Least and largest value. */
export type Bounds = readonly [least: number, most: number];

/** What a fix may hold, in the unit of the name, wide enough for any car on any road; what lies outside is no value. */
export const fixBounds = {
  latitude_deg: [-90, 90],
  longitude_deg: [-180, 180],
  speed_mps: [0, 1000],
  elevation_m: [-500, 9000],
  accuracy_m: [0, 10000],
  hdop: [0, 100],
} as const satisfies Readonly<Record<string, Bounds>>;

/** The value, or NaN for "no value" where it lies outside the bounds or there is none. */
export function bounded(value: number | null, [least, most]: Bounds): number {
  return value !== null && value >= least && value <= most ? value : Number.NaN;
}
