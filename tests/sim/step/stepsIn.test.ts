import { expect, it } from "vitest";
import { stepsIn } from "../../../sim/step/stepsIn.ts";

it("cuts an interval under way into equal steps of at most a second", () => {
  expect([0.2, 1, 2.5, 3].map((dt_s) => stepsIn(dt_s, 5, 6))).toEqual([1, 1, 3, 3]);
  expect(stepsIn(3, 0, 5)).toBe(3);
  expect(stepsIn(3, 5, 0)).toBe(3);
});

it("cuts one at rest into steps of at most a minute", () => {
  expect([1, 60, 61, 3600].map((dt_s) => stepsIn(dt_s, 0, 0))).toEqual([1, 1, 2, 60]);
});

it("makes no step more of a second that rounding has lengthened", () => {
  expect(stepsIn(0.1 + 0.2 + 2.7, 5, 6)).toBe(3);
});
