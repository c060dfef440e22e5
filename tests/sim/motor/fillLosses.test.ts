import { describe, expect, it } from "vitest";
import { fillLosses } from "../../../sim/motor/fillLosses.ts";
import { fourTermLoss_W } from "../../../sim/motor/loss.ts";

const law = { copper_coeff: 0.08, iron_coeff: 0.6, windage_coeff: 2e-6, constant_W: 60 };
const speed_radps = [0, 100, 200, 300, 400];
const torque_Nm = [0, 20, 40, 60];
const whole = speed_radps.map((speed) => torque_Nm.map((torque) => fourTermLoss_W(law, torque, speed)));
/** The table without the nodes that `isKnown` turns down. */
const without = (isKnown: (i: number, j: number) => boolean, scale = 1) =>
  whole.map((row, i) => row.map((loss_W, j) => (isKnown(i, j) ? loss_W * scale : undefined)));

describe("a table with gaps", () => {
  it("of a law is that law, on its edges and inside", () => {
    const filled = fillLosses(
      speed_radps,
      torque_Nm,
      without((i, j) => i > 0 && j > 0 && !(i === 2 && j === 2)),
    );
    for (const [i, row] of filled.loss_W.entries())
      for (const [j, loss_W] of row.entries()) expect(Math.abs(loss_W / whole[i][j] - 1)).toBeLessThan(1e-6);
    expect(filled.law.constant_W).toBeCloseTo(60, 3);
  });

  it("leaves what is known as it is", () => {
    const known = without(() => true, 1.3);
    expect(fillLosses(speed_radps, torque_Nm, known).loss_W).toEqual(known);
  });

  it("weighs the ratios of known to law by 1 over how far they are, first met in each direction", () => {
    // The node (2, 1) is open; so is (2, 2), so that its neighbour along the row is two away.
    const known = without((i, j) => !(i === 2 && (j === 1 || j === 2)));
    known[1][1] = 1.2 * whole[1][1];
    const { loss_W, law: found } = fillLosses(speed_radps, torque_Nm, known);
    const ratio = (i: number, j: number) => (known[i][j] ?? 0) / fourTermLoss_W(found, torque_Nm[j], speed_radps[i]);
    const mean = (ratio(1, 1) + ratio(3, 1) + ratio(2, 0) + ratio(2, 3) / 2) / 3.5;
    expect(loss_W[2][1] / (fourTermLoss_W(found, 20, 200) * mean)).toBeCloseTo(1, 12);
  });

  it("asks the diagonals where nothing is known straight on", () => {
    // Only the four corners round the middle of a table of three by three are known, none of them in its row or column.
    const speeds = [100, 200, 300];
    const torques = [20, 40, 60];
    const corners = speeds.map((speed, i) =>
      torques.map((torque, j) =>
        i !== 1 && j !== 1 ? fourTermLoss_W(law, torque, speed) * (i === 0 ? 1.1 : 1) : undefined,
      ),
    );
    const { loss_W, law: found } = fillLosses(speeds, torques, corners);
    const ratio = (i: number, j: number) => (corners[i][j] ?? 0) / fourTermLoss_W(found, torques[j], speeds[i]);
    const mean = (ratio(0, 0) + ratio(0, 2) + ratio(2, 0) + ratio(2, 2)) / 4;
    expect(loss_W[1][1] / (fourTermLoss_W(found, 40, 200) * mean)).toBeCloseTo(1, 12);
  });

  it("finds the known nodes at the far end of a long row", () => {
    // Two rows of six, of which the first row's last node is known beside the whole second row.
    const torques = [10, 20, 30, 40, 50, 60];
    const known = [100, 200].map((speed, i) =>
      torques.map((torque, j) =>
        i === 1 || j === 5 ? fourTermLoss_W(law, torque, speed) * (i === 1 ? 1 : 1.2) : undefined,
      ),
    );
    const { loss_W, law: found } = fillLosses([100, 200], torques, known);
    const ratio = (i: number, j: number) => (known[i][j] ?? 0) / fourTermLoss_W(found, torques[j], [100, 200][i]);
    // Five nodes along the row and one along the column.
    const mean = (ratio(0, 5) / 5 + ratio(1, 0)) / (1 / 5 + 1);
    expect(loss_W[0][0] / (fourTermLoss_W(found, 10, 100) * mean)).toBeCloseTo(1, 12);
  });

  it("takes the law itself where nothing is known in any of the eight directions", () => {
    // Known are only nodes a knight's move from the corner.
    const speeds = [100, 200, 300];
    const torques = [20, 40, 60];
    const known = speeds.map((speed, i) =>
      torques.map((torque, j) => (i + j === 3 ? 1.5 * fourTermLoss_W(law, torque, speed) : undefined)),
    );
    const { loss_W, law: found } = fillLosses(speeds, torques, known);
    expect(loss_W[0][0]).toBeCloseTo(fourTermLoss_W(found, 20, 100), 12);
  });

  it("of a motor with a thousandth of the losses is filled with a thousandth", () => {
    const isKnown = (i: number, j: number) => i > 0 && j > 0 && i + j !== 4;
    const known = without(isKnown);
    known[1][1] = 1.2 * whole[1][1];
    const small = known.map((row) => row.map((loss_W) => (loss_W === undefined ? undefined : loss_W / 1000)));
    const filled = fillLosses(speed_radps, torque_Nm, known).loss_W.flat();
    const smallFilled = fillLosses(speed_radps, torque_Nm, small).loss_W.flat();
    for (const [k, loss_W] of filled.entries()) expect((1000 * smallFilled[k]) / loss_W).toBeCloseTo(1, 6);
  });

  it("takes a loss of nought for none that is known to the law", () => {
    const known = without(() => true);
    known[0][0] = 0;
    const { loss_W, law: found } = fillLosses(speed_radps, torque_Nm, known);
    expect(loss_W[0][0]).toBe(0);
    expect(found.constant_W).toBeCloseTo(60, 3);
  });
});
