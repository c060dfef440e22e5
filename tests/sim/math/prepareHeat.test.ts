import { describe, expect, it } from "vitest";
import { derating_frac, prepareHeat } from "../../../sim/math/heatLump.ts";

const part = { capacity_kJpK: 2, cooling_WpK: 1.5, derateFrom_degC: 40, derateTo_degC: 60 };

describe("heat of equal parts", () => {
  it("adds up their capacities and what cools them", () => {
    const heat = prepareHeat(part, 4);
    expect(heat.perCapacity_KpJ).toBeCloseTo(1 / 8000, 15);
    expect(heat.cooling_WpK).toBe(6);
    expect(heat.derateFrom_K).toBeCloseTo(313.15, 9);
    expect(heat.derateTo_K).toBeCloseTo(333.15, 9);
  });
  it("is none where they have no word on it, and nothing is ever held back", () => {
    const heat = prepareHeat(undefined, 4);
    expect([heat.perCapacity_KpJ, heat.cooling_WpK, derating_frac(heat, 1000)]).toEqual([0, 0, 1]);
  });
});

it("holds work back in a straight line between two temperatures", () => {
  const heat = prepareHeat(part, 1);
  expect([300, 318.15, 340].map((at_K) => derating_frac(heat, at_K))).toEqual([1, expect.closeTo(0.75, 9), 0]);
});
