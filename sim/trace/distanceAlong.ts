/**
 * Distance driven up to each sample, in metres, same length as the arrays, first one 0. Speed is a straight line between
 * samples, so a step's distance is its mean speed times its time (trapezoid rule, exact for such a speed).
 */
export function distanceAlong_m(time_s: Float64Array, speed_mps: Float64Array): Float64Array {
  const distance_m = new Float64Array(time_s.length);
  for (let i = 1; i < time_s.length; i++) {
    const mean_mps = 0.5 * (speed_mps[i - 1] + speed_mps[i]);
    distance_m[i] = distance_m[i - 1] + mean_mps * (time_s[i] - time_s[i - 1]);
  }
  return distance_m;
}
