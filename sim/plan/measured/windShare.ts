import type { DrivenAsMeasured } from "./driveAsMeasured.ts";

/**
 * By what share a head wind of 1 m/s would make drag seem larger on a drive, to first order. Drag draws Σ (v + w)² v in place of Σ v³:
 *
 *   2 Σ v² / Σ v³
 *
 * 0 for a drive that never moves.
 */
export function windShare({ target_mps }: Pick<DrivenAsMeasured, "target_mps">): number {
  let [squares, cubes] = [0, 0];
  for (const speed_mps of target_mps) {
    squares += speed_mps ** 2;
    cubes += speed_mps ** 3;
  }
  return cubes > 0 ? (2 * squares) / cubes : 0;
}
