import { expect, it } from "vitest";
import { readSum } from "../../../../shared/quantity/reading/readSum.ts";
import { refusal, understood, written } from "./written.ts";

const sum = (...given: Parameters<typeof written>) => readSum(written(...given));

it("adds terms up, those without a unit in that of the last", () => {
  expect(understood(sum("mass", "40+35+18")).value).toBe(93);
  expect(understood(sum("mass", "2 x 75 kg + 40 kg")).value).toBe(190);
  expect(understood(sum("mass", "10 + 20 lb")).value).toBeCloseTo(30 * 0.45359237, 9);
});

it("bounds the sum and not its terms", () => {
  expect(refusal(sum("mass", "60 + 60", { max: 100 })).problem.code).toBe("quantity-range");
  expect(understood(sum("mass", "60 + 60", { max: 120 })).value).toBe(120);
});

it("adds the bands of its terms", () => {
  expect(understood(sum("mass", "40 ± 2 kg + 35 ± 3 kg"))).toMatchObject({ value: 75, plusMinus: 5 });
});

it("is none of a single term, or of what does not add up", () => {
  expect(sum("mass", "40 kg")).toBeUndefined();
  expect(sum("temperature", "20 + 20")).toBeUndefined();
  expect(sum("mass", "40 + x")).toBeUndefined();
});
