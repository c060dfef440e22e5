import { expect, it } from "vitest";
import type { MotorSurface } from "../../../../../sim/index.ts";
import { operatingPointsInWords } from "../../../../../web/charts/parts/motorGround/operatingPointsInWords.ts";

const map = { maxSpeed_rpm: 8000, limits: [{ name: "controller", points: [{ speed_rpm: 0, torque_Nm: 80 }] }] };
const said = (points: readonly { speed_rpm: number; torque_Nm: number; time_s: number }[]) =>
  operatingPointsInWords(
    { name: "A", map: map as unknown as MotorSurface, contours: "loss" },
    points as unknown as Parameters<typeof operatingPointsInWords>[1],
    [{ speed_rpm: 0, torque_Nm: 120 }],
    (torque_Nm) => `${torque_Nm} Nm`,
  );

it("says for how long the motor turns, where most, and what it is allowed", () => {
  const words = said([
    { speed_rpm: 2000, torque_Nm: 30, time_s: 40 },
    { speed_rpm: 3000, torque_Nm: 50, time_s: 10 },
  ]);
  expect(words).toMatch(/it turns for 50 s, longest near 2000 rpm and 30 Nm \(40 s\), between 2000 and 3000 rpm/);
  expect(words).toMatch(
    /The envelope allows 120 Nm and 8000 rpm; controller allows 80 Nm\. Contours show loss in watts\.$/,
  );
});

it("says that it does not turn", () => {
  expect(said([])).toMatch(/^Where the motor works with A: it does not turn in this run\./);
});
