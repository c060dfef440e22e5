import { expect, it } from "vitest";
import { rectangularTable } from "../../../sim/math/rectangularTable.ts";
import { type Loss, motorLoss_W } from "../../../sim/motor/loss.ts";

const flat: Loss = { form: "flat", efficiency_frac: 0.8 };
const law: Loss = {
  form: "fourTerm",
  law: { copper_coeff: 0.5, iron_coeff: 1, windage_coeff: 1e-6, constant_W: 100 },
};
const mirrored: Loss = {
  form: "table",
  table: rectangularTable(
    [0, 100],
    [0, 50],
    [
      [0, 400],
      [100, 500],
    ],
  ),
  isMirrored: true,
};
const bothWays: Loss = {
  form: "table",
  table: rectangularTable(
    [0, 100],
    [-50, 0, 50],
    [
      [900, 0, 400],
      [1000, 100, 500],
    ],
  ),
  isMirrored: false,
};

it("of one flat efficiency divides when driving and multiplies when braking", () => {
  const drawn_W = 40 * 100 + motorLoss_W(flat, 40, 100);
  expect(drawn_W).toBeCloseTo((40 * 100) / 0.8, 9);
  const returned_W = -40 * 100 + motorLoss_W(flat, -40, 100);
  expect(returned_W).toBeCloseTo(-40 * 100 * 0.8, 9);
  expect(0.5 * 100 + motorLoss_W(flat, 0.5, 100)).toBeCloseTo((0.5 * 100) / 0.8, 12);
  expect(motorLoss_W(flat, 0, 100)).toBeCloseTo(0, 14);
});

it("by the four-term law is the same for either sign of torque", () => {
  expect(motorLoss_W(law, 20, 200)).toBeCloseTo(0.5 * 400 + 200 + 8 + 100, 9);
  expect(motorLoss_W(law, -20, 200)).toBe(motorLoss_W(law, 20, 200));
});

it("by a table of driving alone is mirrored for braking; by one that holds braking it is not", () => {
  expect(motorLoss_W(mirrored, -50, 100)).toBe(500);
  expect(motorLoss_W(mirrored, 25, 50)).toBeCloseTo(250, 9);
  expect(motorLoss_W(bothWays, -50, 100)).toBe(1000);
  expect(motorLoss_W(bothWays, 50, 100)).toBe(500);
});

it("by a table is never below nothing beyond its edge", () => {
  const falling: Loss = {
    form: "table",
    table: rectangularTable(
      [0, 100],
      [0, 50],
      [
        [400, 0],
        [400, 0],
      ],
    ),
    isMirrored: true,
  };
  expect(motorLoss_W(falling, 200, 50)).toBe(0);
});
