import { expect, it } from "vitest";
import { plainNumber } from "../../shared/plainNumber.ts";

it.each([
  ["12.5", 12.5],
  ["-.5", -0.5],
  ["+3.", 3],
  ["1e3", 1000],
])("reads %s", (text, value) => {
  expect(plainNumber(text)).toBe(value);
});

it.each(["", " ", "1,5", "1.2.3", "0x10", "1e999", "12 V", "Infinity"])("is NaN for %j", (text) => {
  expect(plainNumber(text)).toBeNaN();
});

it("is done with a million digits that are no number, where work by the square of them would take hours", () => {
  expect(plainNumber(`${"1".repeat(1e6)}x`)).toBeNaN();
});
