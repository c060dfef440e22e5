import { expect, it } from "vitest";
import { readFraction } from "../../../../shared/quantity/reading/readFraction.ts";
import { refusal, understood, written } from "./written.ts";

it.each([
  ["85 %", 0.85],
  ["0.85", 0.85],
  ["85", 0.85],
  ["850 ‰", 0.85],
  ["0", 0],
])("%s is a share of %f", (text, value) => {
  expect(understood(readFraction(written("fraction", text))).value).toBeCloseTo(value, 12);
});

it("asks whether a percentage below one is the share itself", () => {
  expect(understood(readFraction(written("fraction", "0.85 %"))).question?.id).toBe("percent");
});

it("refuses more than all, words and other units", () => {
  expect(refusal(readFraction(written("fraction", "110 %"))).problem.code).toBe("quantity-range");
  expect(refusal(readFraction(written("fraction", "most"))).ok).toBe(false);
  expect(refusal(readFraction(written("fraction", "5 kg"))).ok).toBe(false);
});
