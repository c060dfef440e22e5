import { type PositionNoise, WANDER_s } from "./smoothPositions.ts";

/** Largest part of a fix's noise taken to be new in every fix; receivers filter, so it is small. Assumed. */
const WHITE_m = 0.5;
/** Bounds of the wander: the best of open sky, and a street of high houses [GPSSPS2020, table 3.8-1: 8 m at 95 %]. */
const LEAST_m = 1;
const MOST_m = 15;

/**
 * Noise of the positions from how much they change beyond the car's own motion: a wander with standard deviation s and
 * time constant T changes between fixes dt apart by s sqrt(2 (1 - exp(-dt/T))), the white part by its square root of 2.
 * Where fixes lie too far apart to tell (more than 3 s), 5 m are assumed: a telephone in town.
 */
export function positionNoise(incrementNoise_m: number, interval_s: number): PositionNoise {
  if (interval_s > 3) {
    return { wandering_m: 5, white_m: WHITE_m };
  }
  const white_m = Math.max(0.1, Math.min(WHITE_m, incrementNoise_m / 2));
  const wander_m2 = Math.max(0, incrementNoise_m ** 2 - 2 * white_m ** 2);
  const wandering_m = Math.sqrt(wander_m2 / (2 * (1 - Math.exp(-Math.max(interval_s, 0.05) / WANDER_s))));
  return { wandering_m: Math.max(LEAST_m, Math.min(MOST_m, wandering_m)), white_m };
}
