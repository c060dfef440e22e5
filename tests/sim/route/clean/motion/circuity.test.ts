import { describe, expect, it } from "vitest";
import { cornerAcross_m } from "../../../../../sim/route/clean/motion/circuity.ts";

const heading = (angle_deg: number) =>
  [Math.sin((angle_deg * Math.PI) / 180), Math.cos((angle_deg * Math.PI) / 180)] as const;
const across = (first_m: number, into_deg: number, second_m: number, outOf_deg: number) => {
  const [into, outOf] = [heading(into_deg), heading(outOf_deg)];
  const dEast_m = first_m * into[0] + second_m * outOf[0];
  const dNorth_m = first_m * into[1] + second_m * outOf[1];
  return cornerAcross_m(dEast_m, dNorth_m, into, outOf);
};

describe("the road round a corner that nobody saw", () => {
  it.each([
    [100, 30, 60, 120],
    [80, 200, 150, 110],
    [120, 350, 90, 60],
  ])(
    "of %d m on heading %d and %d m on heading %d is the sum of its legs",
    (first_m, into_deg, second_m, outOf_deg) => {
      expect(across(first_m, into_deg, second_m, outOf_deg)).toBeCloseTo(first_m + second_m, 9);
    },
  );

  it.each([
    ["a bend of less than 60 degrees", 100, 0, 60, 50],
    ["lines that meet behind the gap's start", -40, 0, 100, 90],
    ["less than 20 m", 8, 0, 9, 90],
  ])("is no corner where there is %s", (_, first_m, into_deg, second_m, outOf_deg) => {
    expect(across(first_m, into_deg, second_m, outOf_deg)).toBeUndefined();
  });
});
