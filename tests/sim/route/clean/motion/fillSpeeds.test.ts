import { expect, it } from "vitest";
import { interpolated, rawFromPositions } from "../../../../../sim/route/clean/motion/fillSpeeds.ts";
import { timeline } from "../../../../../sim/route/clean/rows/timeline.ts";
import { rowsOf } from "../rowsByHand.ts";

const nan = Number.NaN;

it("is straight between what there is, by time, and level before and after", () => {
  const time_s = Float64Array.of(0, 1, 3, 4, 5);
  expect([...interpolated(time_s, Float64Array.of(nan, 10, nan, 16, nan))]).toEqual([10, 10, 14, 16, 16]);
  expect([...interpolated(time_s, new Float64Array(5).fill(nan))]).toEqual([0, 0, 0, 0, 0]);
});

it("is the way from one position straight to the next over its time", () => {
  const line = timeline(rowsOf(...[0, 1, 2, 3].map((time_s) => ({ time_s }))), 0, 4);
  // 5 m in a second (3-4-5), then 12 m in two.
  const positions = { east_m: Float64Array.of(0, 3, nan, 3), north_m: Float64Array.of(0, 4, nan, 16) };
  expect([...rawFromPositions(line, positions)]).toEqual([5, 5, 5.5, 6]);
});
