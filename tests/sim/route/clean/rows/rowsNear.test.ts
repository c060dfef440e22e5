import { expect, it } from "vitest";
import { nearestPosition, speedNear_mps } from "../../../../../sim/route/clean/rows/rowsNear.ts";
import { everySecond, rowsOf } from "../rowsByHand.ts";

it("is the mean of the speeds recorded within three seconds on that side", () => {
  const rows = everySecond(10, (i) => ({ speed_mps: i }));
  expect(speedNear_mps(rows, 5, 1)).toBe((5 + 6 + 7 + 8) / 4);
  expect(speedNear_mps(rows, 5, -1)).toBe((5 + 4 + 3 + 2) / 4);
});

it("is that of the positions of ten seconds where none is recorded", () => {
  const rows = everySecond(30, (i) => ({ north_m: 12 * i }));
  expect(speedNear_mps(rows, 15, 1)).toBeCloseTo(12, 2);
  expect(speedNear_mps(rowsOf({ time_s: 0 }, { time_s: 1, north_m: 5 }), 0, 1)).toBeNaN();
});

it("finds a position within fifteen seconds or two usual intervals", () => {
  const rows = rowsOf({ time_s: 0 }, { time_s: 10 }, { time_s: 25, north_m: 0 });
  expect(nearestPosition(rows, 0, 1, 1)).toBe(-1);
  expect(nearestPosition(rows, 1, 1, 1)).toBe(2);
  expect(nearestPosition(rows, 0, 1, 13)).toBe(2);
  expect(nearestPosition(rows, 1, -1, 1)).toBe(-1);
});
