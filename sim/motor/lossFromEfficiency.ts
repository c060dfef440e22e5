import { fitFourTerm, type LossPoint } from "./fitFourTerm.ts";
import { type FourTermLaw, fourTermLoss_W } from "./loss.ts";

/** A loss table: rows by speed, columns by torque, both axes rising from zero. */
export interface LossTable {
  readonly speed_radps: readonly number[];
  readonly torque_Nm: readonly number[];
  readonly loss_W: readonly (readonly number[])[];
  /** The law that filled the edges. */
  readonly edgeLaw: FourTermLaw;
}

/**
 * Losses in watts for an efficiency map: T·w·(1/η − 1) at every node above zero torque and speed.
 *
 * Efficiency means nothing at no torque or no speed, yet town driving lives there, so the nodes on those two edges come from a
 * four-term law fitted to the map, shifted to meet the nearest node inside, and held between nothing and that node's loss.
 * Axes that do not begin at zero get a zero node. At least two speeds and two torques above zero; efficiencies above 0.
 */
export function lossFromEfficiency(
  speed_radps: readonly number[],
  torque_Nm: readonly number[],
  efficiency_frac: readonly (readonly number[])[],
): LossTable {
  const points: LossPoint[] = [];
  const inside = new Map<string, number>();
  speed_radps.forEach((speed, i) => {
    torque_Nm.forEach((torque, j) => {
      if (!(speed > 0 && torque > 0)) return;
      const loss_W = torque * speed * (1 / efficiency_frac[i][j] - 1);
      inside.set(`${speed} ${torque}`, loss_W);
      // A node printed as 100 % has no loss to weigh by; it stays in the table but not in the fit.
      if (loss_W > 0) points.push({ torque_Nm: torque, speed_radps: speed, loss_W });
    });
  });
  const edgeLaw = fitFourTerm(points.length > 0 ? points : [{ torque_Nm: 1, speed_radps: 1, loss_W: 1e-9 }]);
  const speeds = [0, ...speed_radps.filter((speed) => speed > 0)];
  const torques = [0, ...torque_Nm.filter((torque) => torque > 0)];
  const loss_W = speeds.map((speed, i) =>
    torques.map((torque, j) => {
      const known_W = inside.get(`${speed} ${torque}`);
      if (known_W !== undefined) return known_W;
      const nearSpeed = speeds[Math.max(i, 1)];
      const nearTorque = torques[Math.max(j, 1)];
      const near_W = inside.get(`${nearSpeed} ${nearTorque}`) ?? 0;
      const shift_W = near_W - fourTermLoss_W(edgeLaw, nearTorque, nearSpeed);
      return Math.min(near_W, Math.max(0, fourTermLoss_W(edgeLaw, torque, speed) + shift_W));
    }),
  );
  return { speed_radps: speeds, torque_Nm: torques, loss_W, edgeLaw };
}
