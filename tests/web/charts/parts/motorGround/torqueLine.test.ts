import { expect, it } from "vitest";
import { peakOf, torqueOn } from "../../../../../web/charts/parts/motorGround/torqueLine.ts";

const line = [
  { speed_rpm: 1000, torque_Nm: 100 },
  { speed_rpm: 3000, torque_Nm: 100 },
  { speed_rpm: 5000, torque_Nm: 50 },
];

it("is straight between its points, and none beyond its ends", () => {
  expect([999, 1000, 4000, 5000, 5001].map((speed_rpm) => torqueOn(line, speed_rpm))).toEqual([0, 100, 75, 50, 0]);
  expect(torqueOn([], 1000)).toBe(0);
});

it("peaks where it is first greatest", () => {
  expect(peakOf(line)).toEqual(line[0]);
  expect(peakOf([])).toEqual({ speed_rpm: 0, torque_Nm: 0 });
});
