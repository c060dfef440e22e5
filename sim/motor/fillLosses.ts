import { fitFourTerm, type LossPoint } from "./fitFourTerm.ts";
import { type FourTermLaw, fourTermLoss_W } from "./loss.ts";

/** A whole table of losses, rows by speed, and the law that filled its gaps. */
interface FilledLosses {
  readonly loss_W: readonly (readonly number[])[];
  readonly law: FourTermLaw;
}

/**
 * A table of losses in watts with its unknown nodes filled.
 *
 *   loss = law(T, w) · mean(known / law) over the nearest known nodes along the row and the column
 *
 * where the law is kc T² + ki w + kw w³ + C fitted to all known nodes [LarminieLowry2012, eq. 8.25]. Being scaled, not
 * shifted, a filled node is never below zero, and at no torque or no speed never above its neighbour. Nearer neighbours
 * weigh more, by 1 over the number of nodes between. At least one known loss above zero.
 */
export function fillLosses(
  speed_radps: readonly number[],
  torque_Nm: readonly number[],
  known_W: readonly (readonly (number | undefined)[])[],
): FilledLosses {
  const points: LossPoint[] = speed_radps.flatMap((speed, i) =>
    torque_Nm.flatMap((torque, j) => {
      const loss_W = known_W[i][j];
      return loss_W === undefined || loss_W <= 0 ? [] : [{ speed_radps: speed, torque_Nm: torque, loss_W }];
    }),
  );
  const law = fitFourTerm(points);
  const ratio = (i: number, j: number) => {
    const loss_W = known_W[i]?.[j];
    if (loss_W === undefined) return undefined;
    const law_W = fourTermLoss_W(law, torque_Nm[j], speed_radps[i]);
    return law_W > 0 ? loss_W / law_W : undefined;
  };
  const loss_W = speed_radps.map((speed, i) =>
    torque_Nm.map((torque, j) => {
      const given_W = known_W[i][j];
      return (
        given_W ?? fourTermLoss_W(law, torque, speed) * nearRatio(ratio, i, j, speed_radps.length, torque_Nm.length)
      );
    }),
  );
  return { loss_W, law };
}

/** The ratio of known loss to law met first in each of the four directions, or in the four diagonals if there is none. */
function nearRatio(
  ratio: (i: number, j: number) => number | undefined,
  i: number,
  j: number,
  rows: number,
  columns: number,
): number {
  const straight = [[0, 1], [0, -1], [1, 0], [-1, 0]] as const; // biome-ignore format: four directions read best in one line
  const diagonal = [[1, 1], [1, -1], [-1, 1], [-1, -1]] as const; // biome-ignore format: as above
  for (const directions of [straight, diagonal]) {
    let sum = 0;
    let weights = 0;
    for (const [down, across] of directions) {
      for (let step = 1; step < Math.max(rows, columns); step++) {
        const found = ratio(i + step * down, j + step * across);
        if (found === undefined) continue;
        sum += found / step;
        weights += 1 / step;
        break;
      }
    }
    if (weights > 0) return sum / weights;
  }
  return 1;
}
