import { expect, it } from "vitest";
import { windShare } from "../../../../sim/plan/measured/windShare.ts";
import { driveOf } from "./logsByHand.ts";

it("is twice the wind over the speed at a steady speed: 0.1 for each m/s at 20 m/s", () => {
  expect(windShare(driveOf([20, 20, 20]))).toBeCloseTo(0.1, 12);
});

it("is weighted to where drag is: 2 (10² + 30²) / (10³ + 30³)", () => {
  expect(windShare(driveOf([0, 10, 30, 0]))).toBeCloseTo(2000 / 28_000, 12);
});

it("is what drag with the wind draws more, but for the square of the wind", () => {
  const speeds = [4, 9, 14, 22, 17, 6];
  const drawn = (wind_mps: number) => speeds.reduce((sum, mps) => sum + (mps + wind_mps) ** 2 * mps, 0);
  const squares = 0.01 ** 2 * speeds.reduce((sum, mps) => sum + mps, 0);
  const share = (drawn(0.01) - squares) / drawn(0) - 1;
  expect(windShare(driveOf(speeds)) * 0.01).toBeCloseTo(share, 12);
});

it("is nothing for a drive that never moves", () => expect(windShare(driveOf([0, 0]))).toBe(0));
