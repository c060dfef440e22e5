import { expect, it } from "vitest";
import { positionsJump } from "../../../../../sim/route/clean/gaps/positionsJump.ts";
import { rowsOf } from "../rowsByHand.ts";

it("jump where no car could have come: 100 m beyond 250 km/h", () => {
  // In two seconds 100 + 2 x 69.4 m.
  const jumps = (north_m: number) => positionsJump(rowsOf({ time_s: 0, north_m: 0 }, { time_s: 2, north_m }), 1);
  expect([90, 235, 242].map(jumps)).toEqual([false, false, true]);
});

it("do not where one of the two is not known", () => {
  expect(positionsJump(rowsOf({ time_s: 0 }, { time_s: 1, north_m: 9000 }), 1)).toBe(false);
  expect(positionsJump(rowsOf({ time_s: 0, north_m: 9000 }, { time_s: 1 }), 1)).toBe(false);
});
