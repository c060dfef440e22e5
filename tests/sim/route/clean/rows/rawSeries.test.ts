import { expect, it } from "vitest";
import { rawSeries } from "../../../../../sim/route/clean/rows/rawSeries.ts";
import { rowsOf } from "../rowsByHand.ts";

it("has the speed as logged, or else from each position straight to the next", () => {
  const { speed_mps, elevation_m, time_s } = rawSeries(
    rowsOf(
      { time_s: 0, north_m: 0, elevation_m: 100 },
      { time_s: 2, north_m: 20 },
      { time_s: 3, north_m: 90, speed_mps: 12 },
      { time_s: 4 },
      { time_s: 5, north_m: 120 },
    ),
  );
  expect([...time_s]).toEqual([0, 2, 3, 4, 5]);
  // 20 m in 2 s, as logged, and 30 m in 2 s past a row without a position.
  expect(speed_mps[0]).toBeNaN();
  expect([...speed_mps.slice(1)].map((each) => Math.round(100 * each) / 100)).toEqual([10, 12, Number.NaN, 15]);
  expect(elevation_m[0]).toBe(100);
});
