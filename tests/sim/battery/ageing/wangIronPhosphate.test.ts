import { expect, it } from "vitest";
import { wangCycleLoss_frac } from "../../../../sim/battery/ageing/wangIronPhosphate.ts";

const ROOM_K = 298.15;
/** Half of the last digit of a percentage with so many decimals. */
const percent = (loss_frac: number, expected: number, digits: number) =>
  expect(100 * loss_frac).toBeCloseTo(expected, digits);

// The formula with the tabulated factors, computed apart with R = 8.314; tolerance: half of the last digit.
it.each([
  [0.5, 288.15, 2.7734],
  [0.5, 298.15, 4.3115],
  [0.5, 318.15, 9.588],
  [0.5, 333.15, 16.3947],
  [2, 288.15, 2.3971],
  [2, 298.15, 3.6976],
  [2, 318.15, 8.1079],
  [2, 333.15, 13.7333],
])("at %f C and %f K loses %f %% in 1000 Ah", (rate, temperature_K, loss) => {
  percent(wangCycleLoss_frac(rate, temperature_K, 1000), loss, 4);
});

// From the same formula at 25 degC: the other tabulated rates, factors half-way between two, and the end ones beyond.
it.each([
  [6, 4.0095],
  [10, 8.7404],
  [1.25, 4.0642],
  [4, 3.9796],
  [0.25, 4.1535],
  [12, 11.7839],
])("at %f C loses %f %% in 1000 Ah", (rate, loss) => {
  percent(wangCycleLoss_frac(rate, ROOM_K, 1000), loss, 4);
});

it("has lost a fifth at C/2 and 25 degC after 16 116 Ah", () => {
  expect(wangCycleLoss_frac(0.5, ROOM_K, 16_116)).toBeCloseTo(0.2, 5);
});
