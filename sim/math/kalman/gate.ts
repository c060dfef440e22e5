import { type AboveZero, aboveZero } from "./aboveZero.ts";
import type { Passage } from "./switchingModel.ts";

/** This many standard deviations off, a gate is as good as open. */
const OPEN = 4;
const tail: AboveZero = { share: 1, mean: 0, variance: 0 };

/**
 * Takes a Gaussian through a passage's gate, in place, and returns the share of it that goes through. The gate looks at y = h x with a
 * noise of its own: z = y + w e is on one side of the level c with probability F(s (h m - c) / sqrt(h P h' + w^2)), s the side, and what is
 * known of z then is a normal distribution cut off there; the states follow it by their regression on z, so that their first two
 * moments are exact. `gain` is scratch of n.
 */
export function throughGate(
  n: number,
  mean: Float64Array,
  covariance: Float64Array,
  { gateRow, gateLevel, gateSide, gateSpread }: Passage,
  gain: Float64Array,
): number {
  let variance = gateSpread * gateSpread;
  let middle = 0;
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += covariance[i * n + j] * gateRow[j];
    gain[i] = sum;
    variance += gateRow[i] * sum;
    middle += gateRow[i] * mean[i];
  }
  const inside = gateSide * (middle - gateLevel);
  if (inside > OPEN * Math.sqrt(variance)) return 1;
  aboveZero(inside, variance, tail);
  const moved = (gateSide * (tail.mean - inside)) / variance;
  const left = (tail.variance - variance) / (variance * variance);
  for (let i = 0; i < n; i++) mean[i] += gain[i] * moved;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) covariance[i * n + j] += gain[i] * gain[j] * left;
  }
  return tail.share;
}
