import { expect, it } from "vitest";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";

it.each([
  [723.9, 3, "724"],
  [1484, 3, "1480"],
  [0.015, 3, "0.015"],
  [1.5, 3, "1.5"],
  [-0.0001, 3, "-0.0001"],
  [0.0000001234, 3, "1.23e-7"],
  [123.456, 5, "123.46"],
  [100, 12, "100"],
])("%f to %i figures is %s", (value, digits, text) => {
  expect(formatNumber(value, digits)).toBe(text);
});

it("has no minus before a nought", () => {
  expect(formatNumber(-0)).toBe("0");
});
