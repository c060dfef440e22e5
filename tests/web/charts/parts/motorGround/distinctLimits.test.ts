import { expect, it } from "vitest";
import { distinctLimits } from "../../../../../web/charts/parts/motorGround/distinctLimits.ts";

const limit = (name: string, torque_Nm: number) => ({ name, points: [{ speed_rpm: 0, torque_Nm }] });

it("draws limits that allow the same as one line with both names, what they begin with said once", () => {
  const lines = distinctLimits([
    limit("driveline in second", 80),
    limit("driveline in third", 80.01),
    limit("controller", 90),
  ]);
  expect(lines.map(({ name }) => name)).toEqual(["driveline in second or third", "controller"]);
});

it("keeps limits apart that differ", () => {
  expect(distinctLimits([limit("a", 80), limit("b", 80.1)])).toHaveLength(2);
});
