/** What slows a car that rolls freely: F = f0 + f1 v + f2 v², in newtons with v in m/s. */
export interface SlowingForce {
  readonly f0_N: number;
  readonly f1_Npmps: number;
  readonly f2_Npmps2: number;
}

/** Points of a Gauss-Legendre rule on -1 to 1 with their weights, exact for polynomials up to degree 9. */
const POINTS = [-0.906_179_845_938_664, -0.538_469_310_105_683_1, 0, 0.538_469_310_105_683_1, 0.906_179_845_938_664];
const WEIGHTS = [
  0.236_926_885_056_189_1, 0.478_628_670_499_366_5, 0.568_888_888_888_888_9, 0.478_628_670_499_366_5,
  0.236_926_885_056_189_1,
];
const PIECES = 16;

/**
 * Time in which a freely rolling car slows from one speed to another, in seconds:
 *
 *   t = ∫ m_eff dv / F, from v_low to v_high
 *
 * With f1 = 0 this is the difference of two arctangents [J1263, evaluation]; integrated by numbers, so that any sign of the discriminant
 * is served. NaN where the force is not above zero all the way, since the car would not slow.
 */
export function coastTime_s(force: SlowingForce, effective_kg: number, high_mps: number, low_mps: number): number {
  return effective_kg * overBand(force, high_mps, low_mps, (_, slowing_N) => 1 / slowing_N);
}

/** How that time changes with the force's term in v^power: dt/df = -∫ m_eff v^power dv / F². */
export function coastTimeSlope(
  force: SlowingForce,
  effective_kg: number,
  high_mps: number,
  low_mps: number,
  power: number,
): number {
  return (
    -effective_kg * overBand(force, high_mps, low_mps, (speed_mps, slowing_N) => speed_mps ** power / slowing_N ** 2)
  );
}

/** An integral over a band of speed, by Gauss-Legendre in 16 pieces: within 1e-12 of the closed form for the bands of a coast-down. */
function overBand(
  { f0_N, f1_Npmps, f2_Npmps2 }: SlowingForce,
  high_mps: number,
  low_mps: number,
  of: (speed_mps: number, slowing_N: number) => number,
): number {
  const half_mps = (high_mps - low_mps) / (2 * PIECES);
  let sum = 0;
  for (let piece = 0; piece < PIECES; piece++) {
    for (const [i, point] of POINTS.entries()) {
      const speed_mps = low_mps + (2 * piece + 1 + point) * half_mps;
      const slowing_N = f0_N + f1_Npmps * speed_mps + f2_Npmps2 * speed_mps * speed_mps;
      if (!(slowing_N > 0)) return Number.NaN;
      sum += WEIGHTS[i] * of(speed_mps, slowing_N);
    }
  }
  return half_mps * sum;
}
