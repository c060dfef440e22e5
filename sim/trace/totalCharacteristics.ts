import type { Characteristics } from "./characteristics.ts";

/**
 * Characteristics of several traces driven one after the other, each from its own start: times, distances, stops and climbs
 * add up, extremes are the largest, relative positive acceleration is weighted by distance. Climbs are only there where
 * every trace has heights. At least one is wanted.
 */
export function totalCharacteristics(parts: readonly Characteristics[]): Characteristics {
  const sum = (quantity: (part: Characteristics) => number) => parts.reduce((all, part) => all + quantity(part), 0);
  const largest = (quantity: (part: Characteristics) => number) =>
    parts.reduce((top, part) => Math.max(top, quantity(part)), 0);
  const distance_m = sum((part) => part.distance_m);
  const duration_s = sum((part) => part.duration_s);
  const stop_s = sum((part) => part.stop_s);
  const work_J_per_kg = sum((part) => part.relativePositiveAcceleration_mps2 * part.distance_m);
  const total = {
    distance_m,
    duration_s,
    mean_mps: distance_m / duration_s,
    moving_mps: distance_m > 0 ? distance_m / (duration_s - stop_s) : 0,
    max_mps: largest((part) => part.max_mps),
    stop_s,
    stops: sum((part) => part.stops),
    relativePositiveAcceleration_mps2: distance_m > 0 ? work_J_per_kg / distance_m : 0,
    maxAcceleration_mps2: largest((part) => part.maxAcceleration_mps2),
    maxDeceleration_mps2: largest((part) => part.maxDeceleration_mps2),
  };
  if (parts.some((part) => part.climb_m === undefined)) return total;
  return { ...total, climb_m: sum((part) => part.climb_m ?? 0), descent_m: sum((part) => part.descent_m ?? 0) };
}
