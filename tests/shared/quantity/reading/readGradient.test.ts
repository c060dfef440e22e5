import { expect, it } from "vitest";
import { readGradient } from "../../../../shared/quantity/reading/readGradient.ts";
import { refusal, understood, written } from "./written.ts";

it.each([
  ["1 in 6", 1 / 6],
  ["1:6", 1 / 6],
  ["14 %", 0.14],
  ["8 deg", Math.tan((8 * Math.PI) / 180)],
  ["-5 %", -0.05],
])("%s rises by %f of the way along", (text, value) => {
  expect(understood(readGradient(written("gradient", text))).value).toBeCloseTo(value, 12);
});

it("refuses what no road has, and words", () => {
  expect(refusal(readGradient(written("gradient", "1 in 1", { max: 0.5 }))).problem.code).toBe("quantity-range");
  expect(refusal(readGradient(written("gradient", "steep"))).ok).toBe(false);
});
