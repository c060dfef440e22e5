import { expect, it } from "vitest";
import { byCondition, CONDITIONS, conditionNames, rangeIn_km } from "../../../../sim/plan/answer/conditions.ts";

it("holds a new pack in today's weather for one, and divides by winter and multiplies by age once each", () => {
  const allowance = { winter_ratio: 1.6, aged_frac: 0.8 };
  expect(CONDITIONS.map((condition) => rangeIn_km(condition, allowance, { range_km: 10 }))).toEqual([
    10,
    10 / 1.6,
    (10 * 0.8) / 1.6,
  ]);
});

it("makes a value for each, under its own name", () => {
  expect(byCondition((condition) => conditionNames[condition])).toEqual(conditionNames);
});
