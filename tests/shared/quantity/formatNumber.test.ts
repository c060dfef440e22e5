import { expect, it } from "vitest";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { expectWrittenOnce } from "../../support/writtenOnce.ts";

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

it("writes no number in two ways where a figure more or less begins", () => {
  const borders = [1e-5, 0.001, 0.1, 1, 10, 100, 999.5, 1000, 1e6, 1e12];
  for (const digits of [1, 2, 3, 6])
    expectWrittenOnce((value) => `${formatNumber(value, digits)} m`, borders, { m: 1 });
});
