import { straightAt } from "../math/straightAt.ts";
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
export function elevationAt_m({ distance_m, elevation_m }: Profile, place_m: number): number {
  return straightAt(distance_m, elevation_m, place_m);
}
