import { firstWhere } from "../math/halving.ts";
import type { Profile } from "./trace.ts";

/**
 * Height against distance, from height at rows whose distance may stand still. Rows at one and the same distance (the car
 * stands) become one point with their mean height: there is one height to a place. Undefined where the car never moves,
 * since one point is no road. `distance_m` must not fall; both arrays have the same length.
 */
export function profileAlong(distance_m: Float64Array, elevation_m: Float64Array): Profile | undefined {
  const places: number[] = [];
  const heights: number[] = [];
  for (let i = 0; i < distance_m.length; ) {
    const place_m = distance_m[i];
    let sum_m = 0;
    let rows = 0;
    for (; i < distance_m.length && distance_m[i] === place_m; i++, rows++) sum_m += elevation_m[i];
    places.push(place_m);
    heights.push(sum_m / rows);
  }
  if (places.length < 2) return undefined;
  return { distance_m: Float64Array.from(places), elevation_m: Float64Array.from(heights) };
}

/** Height at a place in metres: a straight line between the points, level before the first and after the last one. */
export function elevationAt_m(profile: Profile, place_m: number): number {
  const { distance_m, elevation_m } = profile;
  const last = distance_m.length - 1;
  if (place_m <= distance_m[0]) return elevation_m[0];
  if (place_m >= distance_m[last]) return elevation_m[last];
  const high = firstWhere(1, last, (i) => distance_m[i] > place_m);
  const low = high - 1;
  const share_frac = (place_m - distance_m[low]) / (distance_m[high] - distance_m[low]);
  return elevation_m[low] + share_frac * (elevation_m[high] - elevation_m[low]);
}
