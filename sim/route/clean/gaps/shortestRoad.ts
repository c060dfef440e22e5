/**
 * How hard a car is usually slowed down and moved away at most: UDDS never goes beyond 1.48 m/s2 either way, WLTC class 3b beyond 1.67
 * away and 1.50 in the brakes; a test takes both from the cycles on board.
 */
const USUAL_mps2 = 1.5;

/**
 * The shortest road on which a car that passes one end at `from_mps` and the other at `to_mps`, `gap_s` later, can have been, in metres: it
 * brakes as hard as is usual to the lowest speed v that leaves time to come back to its speed, and stands where that is nought:
 *
 *   v = max(0, (from + to - a T) / 2),   road = (from^2 - v^2 + to^2 - v^2) / (2 a)
 *
 * (equations of uniform acceleration). Where even that is too little to get from the one speed to the other, the mean of both holds.
 */
export function shortestRoad_m(from_mps: number, to_mps: number, gap_s: number): number {
  if (Math.abs(from_mps - to_mps) >= USUAL_mps2 * gap_s) return 0.5 * (from_mps + to_mps) * gap_s;
  const lowest_mps = Math.max(0, 0.5 * (from_mps + to_mps - USUAL_mps2 * gap_s));
  return (from_mps ** 2 + to_mps ** 2 - 2 * lowest_mps ** 2) / (2 * USUAL_mps2);
}
