import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greatestCharge_W, greatestDischarge_W, terminalCurrent_A } from "../../../sim/battery/terminalCurrent.ts";

describe("current for a power", () => {
  it("gives back the power at the terminals, either way, to twelve digits", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 800 }),
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: -999, max: 999 }),
        (E, milliohm, share) => {
          const R = milliohm / 1000;
          const most_W = R > 0 ? (E * E) / (4 * R) : 1e5;
          const power_W = (share / 1000) * most_W;
          const current_A = terminalCurrent_A(power_W, E, R);
          expect(Math.abs(current_A * (E - R * current_A) - power_W)).toBeLessThanOrEqual(1e-12 * most_W);
        },
      ),
    );
  });

  it("keeps its digits at a milliwatt, where the school form loses nine of them", () => {
    // The first two terms of the series in R P / E²; the third is 1e-18 of them.
    const expected_A = (1e-3 / 350) * (1 + (0.1 * 1e-3) / (350 * 350));
    expect(Math.abs(terminalCurrent_A(1e-3, 350, 0.1) / expected_A - 1)).toBeLessThan(1e-15);
  });

  it("is V/2R at the largest power, and 2P/V beyond it, which goes on from there and rises", () => {
    expect(terminalCurrent_A(306_250, 350, 0.1)).toBeCloseTo(1750, 6);
    expect(terminalCurrent_A(306_250 * 1.000001, 350, 0.1)).toBeCloseTo(1750 * 1.000001, 6);
    expect(terminalCurrent_A(1e9, 350, 0.1)).toBeCloseTo(2e9 / 350, 6);
  });
});

describe("most that a pack gives", () => {
  it("is held by the first of current, lowest voltage and V/2R", () => {
    expect(greatestDischarge_W(100, 0.1, 50, 60)).toBeCloseTo(50 * 95, 9);
    expect(greatestDischarge_W(100, 0.1, 1000, 60)).toBeCloseTo(400 * 60, 9);
    expect(greatestDischarge_W(100, 0.1, 1000, 0)).toBeCloseTo(500 * 50, 9);
  });

  it("is nothing where it rests below its lowest voltage", () => {
    expect(greatestDischarge_W(58, 0.1, 100, 60)).toBe(0);
  });
});

describe("most that a pack takes, counted below zero", () => {
  it("is held by the first of current and highest voltage", () => {
    expect(greatestCharge_W(100, 0.1, 50, 120)).toBeCloseTo(-50 * 105, 9);
    expect(greatestCharge_W(100, 0.1, 1000, 120)).toBeCloseTo(-200 * 120, 9);
  });

  it("is nothing where it rests above its highest voltage", () => {
    expect(greatestCharge_W(125, 0.1, 100, 120)).toBeCloseTo(0, 12);
  });
});
