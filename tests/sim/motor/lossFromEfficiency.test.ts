import { expect, it } from "vitest";
import { lossFromEfficiency } from "../../../sim/motor/lossFromEfficiency.ts";

const law_W = (torque: number, speed: number) => 0.4 * torque * torque + 0.6 * speed + 5e-6 * speed ** 3 + 200;
const speeds = [50, 150, 300, 500];
const torques = [10, 30, 60, 100];
const efficiencyOf = (speed: number, torque: number) => (torque * speed) / (torque * speed + law_W(torque, speed));
const map = lossFromEfficiency(
  speeds,
  torques,
  speeds.map((speed) => torques.map((torque) => efficiencyOf(speed, torque))),
);

it("is T w (1/eta - 1) at every node above zero", () => {
  speeds.forEach((speed, i) => {
    torques.forEach((torque, j) => {
      expect(map.loss_W[i + 1][j + 1]).toBeCloseTo(law_W(torque, speed), 6);
    });
  });
});

it("gets edges at no speed and no torque from the law of its neighbours", () => {
  expect(map.speed_radps).toEqual([0, ...speeds]);
  expect(map.torque_Nm).toEqual([0, ...torques]);
  speeds.forEach((speed, i) => {
    expect(map.loss_W[i + 1][0]).toBeCloseTo(law_W(0, speed), 3);
  });
  torques.forEach((torque, j) => {
    expect(map.loss_W[0][j + 1]).toBeCloseTo(law_W(torque, 0), 3);
  });
});

it("does not read what stands at no speed or no torque", () => {
  const withEdges = lossFromEfficiency(
    [0, ...speeds],
    [0, ...torques],
    [[0, 0, 0, 0, 0], ...speeds.map((speed) => [0, ...torques.map((torque) => efficiencyOf(speed, torque))])],
  );
  expect(withEdges.loss_W).toEqual(map.loss_W);
});

it("keeps an edge between nothing and the loss of the node beside it", () => {
  const odd = lossFromEfficiency(
    [100, 200],
    [10, 20],
    [
      [0.99, 0.4],
      [0.5, 0.98],
    ],
  );
  odd.loss_W.forEach((row, i) => {
    row.forEach((loss_W, j) => {
      expect(loss_W).toBeGreaterThanOrEqual(0);
      expect(loss_W).toBeLessThanOrEqual(odd.loss_W[Math.max(i, 1)][Math.max(j, 1)] + 1e-9);
    });
  });
});

it("keeps a node of less than one newton metre", () => {
  const fine = lossFromEfficiency(
    [50, 300],
    [0.5, 10, 60],
    [50, 300].map((speed) => [0.5, 10, 60].map((torque) => efficiencyOf(speed, torque))),
  );
  expect(fine.torque_Nm).toEqual([0, 0.5, 10, 60]);
  expect(fine.loss_W[1][1]).toBeCloseTo(law_W(0.5, 50), 6);
});

it("has no loss anywhere for a map of 100 %", () => {
  const ideal = lossFromEfficiency(
    [100, 200],
    [10, 20],
    [
      [1, 1],
      [1, 1],
    ],
  );
  expect(ideal.loss_W.flat().every((loss_W) => loss_W < 1e-6)).toBe(true);
});
