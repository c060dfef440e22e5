import { expect, it } from "vitest";
import { speedsAgree } from "../../../../../sim/route/clean/rows/speedsAgree.ts";
import { everySecond } from "../rowsByHand.ts";

/** Five minutes at 10 m/s by the positions. */
const agree = (speed_mps: number, seconds = 300) =>
  speedsAgree(everySecond(seconds, (i) => ({ north_m: 10 * i, speed_mps })));

it("agree where the way by speed is between half and four times the straight line", () => {
  expect([4.9, 5.1, 10, 39, 41].map((speed_mps) => agree(speed_mps))).toEqual([false, true, true, true, false]);
});

it("are believed where there is too little to tell", () => {
  expect(agree(0, 120)).toBe(true);
  expect(speedsAgree(everySecond(300, () => ({ north_m: 0, speed_mps: 0 })))).toBe(true);
});
