import { describe, expect, it } from "vitest";
import { gripOnHill, surfaces } from "../../../../sim/plan/hills/gripOnHill.ts";

/** 1000 kg at 10 m/s², of which 60 % stand in front on the level, h/L a quarter; on a slope of sine 0.6. */
const grip = {
  grip_coeff: 0.1,
  drivenAxle: "rear" as const,
  drivenShare_frac: 0.4,
  transfer_ratio: 0.25,
  mass_kg: 1000,
  gravity_mps2: 10,
};
const rows = gripOnHill(grip, 0.6, 6300, 0.6);

describe("a start on a hill", () => {
  it("needs its force over the load of the driven axle, which the slope moves to the rear", () => {
    expect(rows.map(({ drivenAxle }) => drivenAxle)).toEqual(["rear", "front", "both"]);
    const [rear, front, both] = rows.map(({ needed_coeff }) => needed_coeff);
    expect(rear).toBeCloseTo(6300 / (10_000 * (0.8 * 0.4 + 0.6 * 0.25)), 12);
    expect(front).toBeCloseTo(6300 / (10_000 * (0.8 * 0.6 - 0.6 * 0.25)), 12);
    expect(both).toBeCloseTo(6300 / 8000, 12);
  });

  it("has in reserve what a surface gives beyond that, as a share of it", () => {
    const { needed_coeff, reserve_frac } = rows[2];
    expect(Object.keys(reserve_frac)).toEqual(["dry", "wet", "loose"]);
    for (const { name, grip_coeff } of surfaces)
      expect(reserve_frac[name]).toBeCloseTo((grip_coeff - needed_coeff) / needed_coeff, 12);
    expect(reserve_frac["dry"]).toBeGreaterThan(0);
    expect(reserve_frac["wet"]).toBeLessThan(0);
  });

  it("is none with an axle that the slope takes all load off", () => {
    const [, front] = gripOnHill({ ...grip, transfer_ratio: 2 }, 0.6, 6300, 0.6);
    expect(front.needed_coeff).toBe(Number.POSITIVE_INFINITY);
    expect(front.reserve_frac["dry"]).toBe(-1);
  });

  it("asks little of an axle with little on it, be it less than a newton", () => {
    const [, front] = gripOnHill({ ...grip, mass_kg: 0.1 }, 0.6, 0.1, 0.6);
    expect(front.needed_coeff).toBeCloseTo(0.1 / 0.33, 9);
  });
});
