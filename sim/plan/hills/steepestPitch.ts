import { elevationAt_m } from "../../trace/profileAlong.ts";
import type { Profile } from "../../trace/trace.ts";

/** The steepest pitch of a road: its gradient as rise over run, and where it begins. */
export interface Pitch {
  readonly grade_ratio: number;
  readonly from_m: number;
  readonly length_m: number;
}

/** A pitch that long is one that a car has to start and climb on; shorter ones it takes in its stride. Common practice, no source. */
export const PITCH_m = 60;

/**
 * The steepest upward pitch of at least `length_m` along a profile, measured as the mean over that length; the whole road where it is
 * shorter. Nothing where no such pitch rises.
 *
 * With straight lines between its points, the mean over a sliding length is greatest with one end of it at a point.
 */
export function steepestPitch(profile: Profile, length_m = PITCH_m): Pitch | undefined {
  const { distance_m } = profile;
  const start_m = distance_m[0];
  const end_m = distance_m[distance_m.length - 1];
  const over_m = Math.min(length_m, end_m - start_m);
  let best: Pitch | undefined;
  const look = (from_m: number) => {
    if (from_m < start_m || from_m + over_m > end_m) return;
    const rise_m = elevationAt_m(profile, from_m + over_m) - elevationAt_m(profile, from_m);
    // Heights stand against the distance along the road: the rise is the sine's part of it.
    const sinSlope = Math.min(0.99, rise_m / over_m);
    const grade_ratio = sinSlope / Math.sqrt(1 - sinSlope * sinSlope);
    if (rise_m > 0 && (best === undefined || grade_ratio > best.grade_ratio))
      best = { grade_ratio, from_m, length_m: over_m };
  };
  look(start_m);
  for (const place_m of distance_m) {
    look(place_m);
    look(place_m - over_m);
  }
  return best;
}
