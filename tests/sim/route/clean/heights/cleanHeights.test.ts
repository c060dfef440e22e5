import { describe, expect, it } from "vitest";
import { chanceOf } from "../../../../../sim/route/clean/draws/chance.ts";
import { climbOf, findHeights, finishHeights } from "../../../../../sim/route/clean/heights/cleanHeights.ts";
import { RepairList } from "../../../../../sim/route/clean/report/repairList.ts";
import { runSteps } from "../../../../../sim/route/log/steps.ts";
import { everySecond } from "../rowsByHand.ts";

it("climbs by all that rises, rows without a height passed over", () => {
  expect(climbOf(Float64Array.of(100, 103, Number.NaN, 101, 105))).toBe(7);
  expect(climbOf(Float64Array.of(Number.NaN, 50))).toBe(0);
});

describe("heights of a segment", () => {
  const found = (logged: number, repairs = new RepairList()) => {
    const rows = everySecond(40, (i) => ({ elevation_m: i < logged ? 100 + i : Number.NaN }));
    const setting = { draws: 4, chance: chanceOf(1), heightNoise: { found: undefined } };
    const distance_m = Float64Array.from({ length: 40 }, (_, i) => 20 * i);
    return runSteps(findHeights(rows, { from: 0, to: 40, bridges: [] }, distance_m, repairs, 0, setting));
  };
  it("are none from fewer than ten", () => {
    expect(found(9)).toBeUndefined();
    expect(found(10)?.rawClimb_m).toBe(9);
  });
  it("are those logged where no smoothing is wanted, the last carried on", () => {
    const heights = found(20, new RepairList(["heightNoise"]));
    expect(heights?.drawn_m).toBeUndefined();
    expect([heights?.mean_m[5], heights?.mean_m[39]]).toEqual([105, 119]);
  });
  it("are smoothed, and drawn beside that", () => {
    const heights = found(40);
    expect(heights?.drawn_m).toHaveLength(4 * 40);
    expect(Math.abs((heights?.mean_m[20] ?? 0) - 120)).toBeLessThan(1);
  });
});

it("holds slopes to one in three, what was cut shifting the rest", () => {
  const repairs = new RepairList();
  const elevation_m = Float64Array.of(100, 110, 110, 110);
  finishHeights(elevation_m, Float64Array.of(0, 10, 20, 30), 10, 0, repairs, 0);
  expect([...elevation_m].map((each) => Math.round(1e9 * each) / 1e9)).toEqual([100, 103.3, 103.3, 103.3]);
  const said = repairs.finish().map(({ detail }) => detail);
  // 10 m of raw climb less 3.3 m.
  expect(said).toContain("7 m of climb that the raw heights would add smoothed away");
  expect(said).toContain("1 s steeper than one in three held to that, first at 00:00:01");
});
