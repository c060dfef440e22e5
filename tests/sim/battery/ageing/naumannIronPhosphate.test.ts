import { expect, it } from "vitest";
import {
  naumannCalendarLoss_frac,
  naumannCycleLoss_frac,
} from "../../../../sim/battery/ageing/naumannIronPhosphate.ts";

const YEAR_s = 365 * 86_400;
const ROOM_K = 298.15;
/** Half of the last digit of a percentage with so many decimals. */
const percent = (loss_frac: number, expected: number, digits: number) =>
  expect(100 * loss_frac).toBeCloseTo(expected, digits);

it("loses by standing at 25 degC half full 4.252 % in a year and 13.445 % in ten, at 40 degC full 9.430 % in one", () => {
  percent(naumannCalendarLoss_frac(0.5, ROOM_K, YEAR_s), 4.252, 2);
  percent(naumannCalendarLoss_frac(0.5, ROOM_K, 10 * YEAR_s), 13.445, 2);
  percent(naumannCalendarLoss_frac(1, 313.15, YEAR_s), 9.43, 2);
});

it("loses by 1000 full cycles in cycles of 80 % at 1 C 5.69 %", () => {
  percent(naumannCycleLoss_frac(1, 0.8, 1000), 5.69, 2);
});

it("loses by as many in cycles of half its charge at 2 C 7.68 %, by hand", () => {
  // (0.0630 x 2 + 0.0971)(4.0253 x -0.001 + 1.0923) x 31.623.
  percent(naumannCycleLoss_frac(2, 0.5, 1000), 7.6778, 3);
});
