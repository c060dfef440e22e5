import type { Profile } from "./trace.ts";

/** A piece of a road that climbs. Distances along the road. */
export interface Pitch {
  readonly from_m: number;
  readonly to_m: number;
  /** Rise over run, above 0. */
  readonly grade_ratio: number;
}

/** A car of this length that starts on it has all its wheels on the hill, and a log's heights are known no finer. Assumed. */
const SHORTEST_m = 60;

/**
 * The steepest climb of a road that is at least 60 m long (or the whole road, where that is shorter): of all pieces that
 * begin or end at a point of the profile, the one with the greatest rise over its length. Nothing where the road does not climb.
 */
export function steepestPitch({ distance_m, elevation_m }: Profile): Pitch | undefined {
  const last_m = distance_m[distance_m.length - 1];
  const length_m = Math.min(SHORTEST_m, last_m);
  if (!(length_m > 0)) return undefined;
  let steepest: Pitch | undefined;
  const consider = (from_m: number, to_m: number, rise_m: number) => {
    const grade_ratio = rise_m / (to_m - from_m);
    if (grade_ratio > (steepest?.grade_ratio ?? 0)) steepest = { from_m, to_m, grade_ratio };
  };
  let ahead = 0; // the point at or before the end of the piece that begins at point i
  let behind = 0; // the point at or before the beginning of the piece that ends at point i
  for (let i = 0; i < distance_m.length; i++) {
    const at_m = distance_m[i];
    const end_m = at_m + length_m;
    if (end_m <= last_m) {
      while (distance_m[ahead + 1] < end_m) ahead += 1;
      consider(at_m, end_m, between(distance_m, elevation_m, ahead, end_m) - elevation_m[i]);
    }
    const start_m = at_m - length_m;
    if (start_m >= 0) {
      while (distance_m[behind + 1] < start_m) behind += 1;
      consider(start_m, at_m, elevation_m[i] - between(distance_m, elevation_m, behind, start_m));
    }
  }
  return steepest;
}

/** Height at a distance between points k and k + 1. */
function between(distance_m: Float64Array, elevation_m: Float64Array, k: number, at_m: number): number {
  const share = (at_m - distance_m[k]) / (distance_m[k + 1] - distance_m[k]);
  return elevation_m[k] + share * (elevation_m[k + 1] - elevation_m[k]);
}
