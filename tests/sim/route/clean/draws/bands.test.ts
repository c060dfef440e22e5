import { describe, expect, it } from "vitest";
import { spreadOver, stopsOver, unmodelledOf } from "../../../../../sim/route/clean/draws/bands.ts";

const nothing = { energy_frac: 0, distance_frac: 0, stops_frac: 0 };
const piece = (goes: readonly number[], chosen = 0) => ({
  from: 0,
  to: 100,
  chosen,
  energy_J: Float64Array.from(goes, () => 1000),
  distance_m: Float64Array.from(goes, () => 500),
  climb_m: Float64Array.from(goes, () => 0),
  goes: Float64Array.from(goes),
});

describe("what the model leaves out", () => {
  it("widens energy and distance with how much the road is seen to wind", () => {
    const { energy_frac, distance_frac } = unmodelledOf(30, false, 0.05);
    const straight = unmodelledOf(30, false, 0);
    // Independent parts add as squares.
    expect(energy_frac).toBeCloseTo(Math.hypot(straight.energy_frac, 0.05), 12);
    // As much again lies unseen of a road that wanders by chance, a third of smooth bends (a chord's shortfall goes as its length squared).
    expect(distance_frac).toBeGreaterThan(Math.hypot(straight.distance_frac, 0.05 / 3));
    expect(distance_frac).toBeLessThan(Math.hypot(straight.distance_frac, 0.05));
  });

  it("is no less where fixes are further apart, and holds beyond half a minute", () => {
    for (const hasSpeeds of [true, false]) {
      const at = (interval_s: number) => unmodelledOf(interval_s, hasSpeeds, 0);
      for (const what of ["distance_frac", "stops_frac"] as const)
        expect(at(30)[what]).toBeGreaterThanOrEqual(at(1)[what]);
      expect(at(120)).toEqual(at(30));
      expect(at(0.1)).toEqual(at(1));
    }
  });

  it("comes on top of what the draws spread", () => {
    const spread = spreadOver([piece([1, 1])], { ...nothing, distance_frac: 0.04 });
    expect(spread?.distance_ratio).toEqual({ low: 0.96, high: 1.04 });
    expect(spread?.energy_ratio).toEqual({ low: 1, high: 1 });
  });
});

describe("stops on the way", () => {
  it("lie between one go and the next, through all pieces of a draw", () => {
    // Five draws of 2 + 3 goes and so on: 4, 4, 5, 3, 8 stops, in order 3 4 4 5 8; straight between them 10 % is 3.4 and 90 % is 6.8.
    const pieces = [piece([2, 2, 3, 1, 4]), piece([3, 3, 3, 3, 5], 2)];
    const found = stopsOver(pieces, nothing);
    expect(found?.taken).toBe(2 + 3 - 1);
    expect(found?.band.low).toBeCloseTo(3.4, 12);
    expect(found?.band.high).toBeCloseTo(6.8, 12);
  });

  it("are open by one at least where the model leaves any out", () => {
    expect(stopsOver([piece([3, 3])], { ...nothing, stops_frac: 0.15 })?.band).toEqual({ low: 1, high: 3 });
    expect(stopsOver([piece([21, 21])], { ...nothing, stops_frac: 0.15 })?.band).toEqual({ low: 17, high: 23 });
  });

  it("of a log that never moves are none; of no draws nothing is known", () => {
    expect(stopsOver([piece([0, 0])], nothing)).toEqual({ taken: 0, band: { low: 0, high: 0 } });
    expect(stopsOver([], nothing)).toBeUndefined();
  });
});
