import type { PositionNoise } from "./motion/smoothPositions.ts";

/** A car that only slows down for another passes at walking pace. Assumed. */
const PASSING_mps = 1.5;

/**
 * The shortest stop that shows in a log, in s. Between two fixes no stop shows that is shorter than their interval. Where positions alone
 * have to show it (`noise`), the way that passing at walking pace would have made in its time must be more than two standard deviations of
 * their correlated noise in it:
 *
 *   v t > 2 s sqrt(2 (1 - exp(-t / T))), nearly 2 s sqrt(2 t / T):    t > 8 s^2 / (T v^2)
 */
export function shortestStop_s(
  interval_s: number,
  noise: Pick<PositionNoise, "correlated_m" | "correlation_s"> | undefined,
): number {
  const byNoise_s = noise ? (8 * noise.correlated_m ** 2) / (noise.correlation_s * PASSING_mps ** 2) : 0;
  return Math.max(interval_s, byNoise_s);
}
