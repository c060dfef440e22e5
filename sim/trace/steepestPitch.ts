import { gradeOf_ratio } from "../math/slope.ts";
import { elevationAt_m } from "./profileAlong.ts";
import type { Profile } from "./trace.ts";

/** A piece of a road that climbs. Distances along the road. */
export interface Pitch {
  readonly from_m: number;
  readonly to_m: number;
  /** Rise over run, above 0. */
  readonly grade_ratio: number;
}

/** A pitch that long is one that a car has to start and climb on; shorter ones it takes in its stride. Common practice, no source. */
const SHORTEST_m = 60;
/** Steeper than this sine is no road, but a fault of the heights. */
const STEEPEST = 0.99;

/**
 * The steepest climb of a road that is at least 60 m long, as the mean over that length (or over the whole road, where that is shorter).
 * Nothing where the road does not climb.
 *
 * With straight lines between the points of the profile, the mean over a sliding length is greatest with one end of it at a point.
 */
export function steepestPitch(profile: Profile): Pitch | undefined {
  const { distance_m } = profile;
  const start_m = distance_m[0];
  const end_m = distance_m[distance_m.length - 1];
  const length_m = Math.min(SHORTEST_m, end_m - start_m);
  if (!(length_m > 0)) return undefined;
  let steepest: Pitch | undefined;
  const consider = (from_m: number, to_m: number) => {
    if (from_m < start_m || to_m > end_m) return;
    // Heights stand against the distance along the road: the rise is the sine's part of it.
    const sinSlope = Math.min(STEEPEST, (elevationAt_m(profile, to_m) - elevationAt_m(profile, from_m)) / length_m);
    const grade_ratio = gradeOf_ratio(sinSlope);
    if (grade_ratio > (steepest?.grade_ratio ?? 0)) steepest = { from_m, to_m, grade_ratio };
  };
  for (const place_m of distance_m) {
    consider(place_m, place_m + length_m);
    consider(place_m - length_m, place_m);
  }
  return steepest;
}
