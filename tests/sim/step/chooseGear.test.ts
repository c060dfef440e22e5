import { describe, expect, it } from "vitest";
import { advanceGear, chooseGear, createGearState } from "../../../sim/step/chooseGear.ts";
import type { Gear } from "../../../sim/vehicle/gear.ts";

const gear = (name: string, top_mps: number): Gear => ({
  name,
  motor_radpm: 1,
  efficiency_frac: 1,
  drive_Nm: 1,
  overrun_Nm: 1,
  regen_Nm: 1,
  top_mps,
});
const gears = [gear("first", 15), gear("second", 25), gear("third", 60)];
const up_mps = Float64Array.of(10, 20);

/** Drives by turns at mean speeds for so many seconds each; returns the gears taken. */
function taken(...legs: (readonly [number, number])[]): number[] {
  const state = createGearState();
  return legs.map(([mean_mps, dt_s]) => {
    const chosen = chooseGear(gears, up_mps, state, mean_mps);
    advanceGear(state, chosen, dt_s);
    return chosen;
  });
}

describe("without a change in the last ten seconds", () => {
  it("goes by the bare speeds, the lower gear at the speed itself", () => {
    expect([0, 9.9, 10, 10.1, 20, 20.1, 50].map((mean_mps) => taken([mean_mps, 1])[0])).toEqual([0, 0, 0, 1, 1, 2, 2]);
  });
  it("changes back as soon as the speed is passed", () => {
    expect(taken([5, 1], [10.1, 10], [9.99, 1])).toEqual([0, 1, 0]);
    expect(taken([15, 60], [9.99, 10], [10.01, 1])).toEqual([1, 0, 1]);
  });
});

describe("where the speed dithers round a change", () => {
  it("stays in the higher gear until 5 % below", () => {
    expect(taken([5, 1], [10.1, 1], [9.9, 1], [10.2, 1], [9.51, 1], [9.49, 1])).toEqual([0, 1, 1, 1, 1, 0]);
  });
  it("stays in the lower gear until 5 % above", () => {
    expect(taken([15, 60], [9.9, 1], [10.1, 1], [10.49, 1], [10.51, 1])).toEqual([1, 0, 0, 0, 1]);
  });
  it("changes at last after ten seconds", () => {
    expect(taken([5, 1], [10.1, 1], [9.9, 8], [9.9, 1], [9.9, 1])).toEqual([0, 1, 1, 1, 0]);
  });
  it("takes the higher gear at once where the lower one does not reach the speed", () => {
    const low = [gear("first", 10.05), gears[1], gears[2]];
    const state = createGearState();
    advanceGear(state, 1, 60);
    advanceGear(state, chooseGear(low, up_mps, state, 9.9), 1);
    expect(chooseGear(low, up_mps, state, 10.04)).toBe(0);
    expect(chooseGear(low, up_mps, state, 10.06)).toBe(1);
  });
});

it("goes on in the same direction at once, and down by two where the car is nearly at rest", () => {
  expect(taken([5, 1], [10.1, 1], [20.1, 1])).toEqual([0, 1, 2]);
  expect(taken([50, 60], [19.9, 1], [9.9, 1])).toEqual([2, 1, 0]);
  expect(taken([15, 60], [20.1, 1], [1, 1])).toEqual([1, 2, 0]);
});
