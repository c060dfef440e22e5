import { expect, it } from "vitest";
import { fitFourTerm } from "../../../sim/motor/fitFourTerm.ts";
import { fourTermLoss_W } from "../../../sim/motor/loss.ts";

const law = { copper_coeff: 0.3, iron_coeff: 0.01, windage_coeff: 5e-6, constant_W: 600 };

it("finds the law that made the points", () => {
  const points = [20, 60, 140].flatMap((torque_Nm) =>
    [100, 300, 700].map((speed_radps) => ({
      torque_Nm,
      speed_radps,
      loss_W: fourTermLoss_W(law, torque_Nm, speed_radps),
    })),
  );
  const found = fitFourTerm(points);
  for (const { torque_Nm, speed_radps, loss_W } of points)
    expect(fourTermLoss_W(found, torque_Nm, speed_radps) / loss_W).toBeCloseTo(1, 9);
});

it("passes through a single point with no term below zero", () => {
  const found = fitFourTerm([{ torque_Nm: 50, speed_radps: 200, loss_W: 900 }]);
  expect(fourTermLoss_W(found, 50, 200)).toBeCloseTo(900, 6);
  expect(Object.values(found).every((coefficient) => coefficient >= 0)).toBe(true);
});
