import { expect, it } from "vitest";
import { readRate } from "../../../../shared/quantity/reading/readRate.ts";
import { refusal, understood, written } from "./written.ts";

it.each([
  ["3 %", 0.03],
  ["3", 0.03],
  ["-1 % a year", -0.01],
  ["2,5 per cent", 0.025],
])("%s a year is a share of %f", (text, value) => {
  expect(understood(readRate(written("rate", text))).value).toBeCloseTo(value, 12);
});

it("refuses words and other units", () => {
  expect(refusal(readRate(written("rate", "a lot"))).ok).toBe(false);
  expect(refusal(readRate(written("rate", "3 km"))).problem.message).toContain("km");
});
