import { fillLosses } from "./fillLosses.ts";

/** A loss table: rows by speed, columns by torque, both axes rising from zero. */
interface LossTable {
  readonly speed_radps: readonly number[];
  readonly torque_Nm: readonly number[];
  readonly loss_W: readonly (readonly number[])[];
}

/**
 * Losses in watts for an efficiency map: T·w·(1/η − 1) at every node above zero torque and speed.
 *
 * Efficiency means nothing at no torque or no speed, yet town driving lives there, so the nodes on those two edges are filled by
 * the four-term law fitted to the map (`fillLosses`). Axes that do not begin at zero get a zero node. At least two speeds and two torques
 * above zero; efficiencies above 0. A map of nothing but 1 loses nothing.
 */
export function lossFromEfficiency(
  speed_radps: readonly number[],
  torque_Nm: readonly number[],
  efficiency_frac: readonly (readonly number[])[],
): LossTable {
  const withZero = (axis: readonly number[]) => [0, ...axis.filter((value) => value > 0)];
  const speeds = withZero(speed_radps);
  const torques = withZero(torque_Nm);
  const known_W = speeds.map((speed) =>
    torques.map((torque) => {
      if (speed === 0 || torque === 0) return undefined;
      const efficiency_ratio = efficiency_frac[speed_radps.indexOf(speed)][torque_Nm.indexOf(torque)];
      return torque * speed * (1 / efficiency_ratio - 1);
    }),
  );
  const losesNothing = known_W.every((row) => row.every((loss_W) => loss_W === undefined || loss_W === 0));
  const loss_W = losesNothing ? known_W.map((row) => row.map(() => 0)) : fillLosses(speeds, torques, known_W).loss_W;
  return { speed_radps: speeds, torque_Nm: torques, loss_W };
}
