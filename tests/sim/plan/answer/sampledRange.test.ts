import { expect, it } from "vitest";
import { homeShare, sampledBand } from "../../../../sim/plan/answer/sampledRange.ts";

// 21 variants, 40 to 60 km: their twentieth is the second, their nineteen twentieths the last but one.
const sampled = { ranges_km: Array.from({ length: 21 }, (_, i) => 40 + i) };

it("lies between the twentieth and the nineteen twentieths of the variants", () => {
  expect(sampledBand(50, sampled)).toEqual({ value: 50, low: 41, high: 59 });
});

it("holds its value, where that is at an end of what may be", () => {
  expect(sampledBand(62, sampled)).toEqual({ value: 62, low: 41, high: 62 });
  expect(sampledBand(39, sampled)).toEqual({ value: 39, low: 39, high: 59 });
});

it("counts the variants that get home, the one that just does among them", () => {
  expect(homeShare(sampled, 55)).toBeCloseTo(6 / 21, 12);
  expect([homeShare(sampled, 39), homeShare(sampled, 61)]).toEqual([1, 0]);
});
