import { nonNegativeLeastSquares } from "../math/nonNegativeLeastSquares.ts";
import type { FourTermLaw } from "./loss.ts";

/** Loss of motor and controller found at one torque and speed. */
export interface LossPoint {
  readonly torque_Nm: number;
  readonly speed_radps: number;
  readonly loss_W: number;
}

/**
 * The four-term law nearest to the points, each counted by its relative error, so that the small losses of town driving
 * weigh as much as the large ones. Coefficients are not negative; with few points some are zero.
 *
 *   P_loss = kc T² + ki w + kw w³ + C      [LarminieLowry2012, eq. 8.25]
 *
 * At least one point; losses above zero.
 */
export function fitFourTerm(points: readonly LossPoint[]): FourTermLaw {
  const rows = points.map(({ torque_Nm, speed_radps, loss_W }) => [
    (torque_Nm * torque_Nm) / loss_W,
    speed_radps / loss_W,
    speed_radps ** 3 / loss_W,
    1 / loss_W,
  ]);
  const [copper_coeff, iron_coeff, windage_coeff, constant_W] = nonNegativeLeastSquares(
    rows,
    points.map(() => 1),
  );
  return { copper_coeff, iron_coeff, windage_coeff, constant_W };
}
