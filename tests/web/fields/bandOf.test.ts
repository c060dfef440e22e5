import { expect, it } from "vitest";
import { bandOf } from "../../../web/fields/bandOf.ts";

it("is the share of the value to either side, of negative values too", () => {
  expect(bandOf("mass", 1480, 74)).toEqual({ plusMinus_frac: 0.05 });
  expect(bandOf("gradient", -0.1, 0.02).plusMinus_frac).toBeCloseTo(0.2, 12);
  expect(bandOf("mass", 100, 200)).toEqual({ plusMinus_frac: 2 });
});

it("is none where none was typed, and of nothing", () => {
  expect(bandOf("mass", 100, undefined)).toEqual({});
  expect(bandOf("mass", 0, 5)).toEqual({});
});

it("is refused beyond twice the value, save for degrees about nought", () => {
  expect(bandOf("mass", 100, 250)).toEqual({
    problem: "found a band of 2.5 times the value to either side, at most 2 times it allowed",
  });
  expect(bandOf("temperature", 1, 5)).toEqual({ plusMinus_frac: 2 });
});
