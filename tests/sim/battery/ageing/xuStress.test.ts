import { expect, it } from "vitest";
import { chargeStress, depthStress, temperatureStress, xuLoss_frac } from "../../../../sim/battery/ageing/xuStress.ts";

const YEAR_s = 365 * 86_400;
const ROOM_K = 298.15;
/** Half of the last digit of a percentage with so many decimals. */
const percent = (loss_frac: number, expected: number, digits: number) =>
  expect(100 * loss_frac).toBeCloseTo(expected, digits);

it("stresses are those printed for depth, temperature and charge", () => {
  expect(depthStress(1)).toBeCloseTo(5.88235e-5, 10);
  expect(depthStress(0.8)).toBeCloseTo(2.97977e-5, 10);
  expect(depthStress(0)).toBe(0);
  expect(depthStress(-0.1)).toBe(0);
  expect(temperatureStress(308.15)).toBeCloseTo(1.95524, 5);
  expect(chargeStress(0.9)).toBeCloseTo(1.51589, 5);
});

it("stresses cost a cell by standing half full at 25 degC 5.7879 % in a year and 17.2858 % in ten", () => {
  const standing = { soc_frac: 0.5, temperature_K: ROOM_K, cycleStress: 0 };
  percent(xuLoss_frac({ ...standing, time_s: YEAR_s }), 5.7879, 3);
  percent(xuLoss_frac({ ...standing, time_s: 10 * YEAR_s }), 17.2858, 3);
});

it("stresses cost a cell by a year at 35 degC and nine tenths with 300 cycles of 80 % 11.696 %, by hand", () => {
  // f = (4.14e-10·31 536 000 + 300·2.97977e-5)·1.51589·1.95524 = 0.0651919.
  const use = { soc_frac: 0.9, temperature_K: 308.15, cycleStress: 300 * depthStress(0.8), time_s: YEAR_s };
  percent(xuLoss_frac(use), 11.6962, 3);
});
