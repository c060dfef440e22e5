import { distanceAlong_m } from "./distanceAlong.ts";
import type { Trace } from "./trace.ts";

/** What kind of driving a trace asks for. Steps are those between its samples. */
export interface Characteristics {
  readonly distance_m: number;
  readonly duration_s: number;
  /** Distance over duration, standing included. */
  readonly mean_mps: number;
  /** Distance over the time not standing. */
  readonly moving_mps: number;
  readonly max_mps: number;
  /** Time of the steps that begin and end at rest. */
  readonly stop_s: number;
  /** How often the car comes to rest and drives off again; the rest at the end is none. */
  readonly stops: number;
  /** Work of speeding up, per mass and distance. */
  readonly relativePositiveAcceleration_mps2: number;
  readonly maxAcceleration_mps2: number;
  /** The hardest slowing, as a positive number. */
  readonly maxDeceleration_mps2: number;
  /** Height gained and lost along the road; absent where no height is known. */
  readonly climb_m?: number;
  readonly descent_m?: number;
}

/**
 * Characteristics of a trace, in SI. With a step's mean speed v, acceleration a and time dt:
 *
 *   distance = sum of v dt                          relative positive acceleration = sum of v a dt over a > 0, / distance
 *
 * so that one step's share is half the rise of the squared speed, and the sum does not hang on how finely the trace is
 * sampled. The name is that of the European rules on emissions in real driving [EU2016-427, App. 7a], which sum a recorded
 * log by central differences and leave out accelerations under 0.1 m/s2. A rest is a speed of exactly 0.
 */
export function characteristics(trace: Trace): Characteristics {
  const { time_s, speed_mps, profile } = trace;
  const last = time_s.length - 1;
  const distance_m = distanceAlong_m(time_s, speed_mps)[last];
  const duration_s = time_s[last];
  let max_mps = speed_mps[0];
  let stop_s = 0;
  let stops = 0;
  let hasRested = false; // since it last moved, having moved before
  let hasMoved = false;
  let positiveWork_J_per_kg = 0;
  let maxAcceleration_mps2 = 0;
  let maxDeceleration_mps2 = 0;
  for (let i = 1; i <= last; i++) {
    const v0_mps = speed_mps[i - 1];
    const v1_mps = speed_mps[i];
    const dt_s = time_s[i] - time_s[i - 1];
    const acceleration_mps2 = (v1_mps - v0_mps) / dt_s;
    max_mps = Math.max(max_mps, v1_mps);
    maxAcceleration_mps2 = Math.max(maxAcceleration_mps2, acceleration_mps2);
    maxDeceleration_mps2 = Math.max(maxDeceleration_mps2, -acceleration_mps2);
    if (acceleration_mps2 > 0) positiveWork_J_per_kg += 0.5 * (v1_mps * v1_mps - v0_mps * v0_mps);
    if (v0_mps === 0 && v1_mps === 0) stop_s += dt_s;
    if (v0_mps > 0) hasMoved = true;
    if (v1_mps === 0 && hasMoved) hasRested = true;
    else if (v1_mps > 0 && hasRested) {
      stops += 1;
      hasRested = false;
    }
  }
  const found = {
    distance_m,
    duration_s,
    mean_mps: distance_m / duration_s,
    moving_mps: distance_m > 0 ? distance_m / (duration_s - stop_s) : 0,
    max_mps,
    stop_s,
    stops,
    relativePositiveAcceleration_mps2: distance_m > 0 ? positiveWork_J_per_kg / distance_m : 0,
    maxAcceleration_mps2,
    maxDeceleration_mps2,
  };
  if (!profile) return found;
  let climb_m = 0;
  let descent_m = 0;
  for (let i = 1; i < profile.elevation_m.length; i++) {
    const rise_m = profile.elevation_m[i] - profile.elevation_m[i - 1];
    if (rise_m > 0) climb_m += rise_m;
    else descent_m -= rise_m;
  }
  return { ...found, climb_m, descent_m };
}
