import { describe, expect, it } from "vitest";
import { spreadOver, stopsFound_frac, stopsOver, unmodelledOf } from "../../../../../sim/route/clean/draws/bands.ts";

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
    const winding = Math.sqrt(energy_frac ** 2 - straight.energy_frac ** 2);
    expect(winding).toBeGreaterThan(0.05 / 3);
    expect(winding).toBeLessThan(0.05);
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
    // Five draws of 2 + 3 goes and so on: 4, 4, 5, 3, 8 stops, in order 3 4 4 5 8; four of them, eight in ten, lie within 3 to 5.
    const pieces = [piece([2, 2, 3, 1, 4]), piece([3, 3, 3, 3, 5], 2)];
    expect(stopsOver(pieces, nothing)).toEqual({ taken: 2 + 3 - 1, likely: 4, band: { low: 3, high: 5 } });
  });

  it("are a single count where eight in ten draws agree on it", () => {
    expect(stopsOver([piece([6, 6, 6, 6, 9])], nothing)?.band).toEqual({ low: 5, high: 5 });
  });

  it("are open by what the model leaves out, the whole counts within", () => {
    expect(stopsOver([piece([3, 3])], { stops_frac: 0.15 })?.band).toEqual({ low: 2, high: 2 });
    expect(stopsOver([piece([23, 23])], { stops_frac: 0.15 })?.band).toEqual({ low: 19, high: 25 });
  });

  it("are more than found where a part is found by chance, and less sure", () => {
    // Of a share of 0.64 that is found, 16 are of 25, give or take sqrt(16 0.36) / 0.64 = 3.75; a band of 80 % is 1.28 of that on each side.
    expect(stopsOver([piece([17, 17])], nothing, 0.64)).toEqual({ taken: 16, likely: 25, band: { low: 21, high: 29 } });
  });

  it("of a log that never moves are none; of no draws nothing is known", () => {
    expect(stopsOver([piece([0, 0])], nothing)).toEqual({ taken: 0, likely: 0, band: { low: 0, high: 0 } });
    expect(stopsOver([], nothing)).toBeUndefined();
  });
});

it("all stops are found where fixes are near, fewer the further they are apart", () => {
  const shares = [1, 5, 10, 20, 30].map(stopsFound_frac);
  expect(shares.slice(0, 2)).toEqual([1, 1]);
  for (let i = 2; i < shares.length; i++) expect(shares[i]).toBeLessThan(shares[i - 1]);
  expect(stopsFound_frac(120)).toBe(stopsFound_frac(30));
});
