import type { Profile } from "../trace/trace.ts";

/** Height at a distance along the road, searching forward from a leg; level before the first and beyond the last point. */
export function elevationAt_m(profile: Profile, distance_m: number, fromLeg: number): number {
  const { distance_m: along_m, elevation_m } = profile;
  const i = legAt(profile, distance_m, fromLeg);
  const run_m = along_m[i + 1] - along_m[i];
  const part = Math.min(1, Math.max(0, (distance_m - along_m[i]) / run_m));
  return elevation_m[i] + part * (elevation_m[i + 1] - elevation_m[i]);
}

/** The leg of the profile at a distance, searching forward from one at or before it. */
export function legAt(profile: Profile, distance_m: number, fromLeg: number): number {
  const last = profile.distance_m.length - 2;
  let i = fromLeg;
  while (i < last && profile.distance_m[i + 1] <= distance_m) i++;
  return i;
}

/** On a way shorter than this, in metres, rounding of the heights would make slopes of its own. */
export const SHORT_m = 1e-6;
/** Steeper than this is no road: a fault of the heights that may not become NaN. */
export const STEEPEST = 0.99;

/** Sine of the slope of a way by its rise and length, and of a way of hardly any length by the leg it lies on. */
export function slopeOver(rise_m: number, length_m: number, profile: Profile, leg: number): number {
  const { distance_m, elevation_m } = profile;
  const slope =
    length_m > SHORT_m
      ? rise_m / length_m
      : (elevation_m[leg + 1] - elevation_m[leg]) / (distance_m[leg + 1] - distance_m[leg]);
  return Math.min(STEEPEST, Math.max(-STEEPEST, slope));
}
