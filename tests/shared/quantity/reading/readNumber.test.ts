import { expect, it } from "vitest";
import { readNumber } from "../../../../shared/quantity/reading/readNumber.ts";

it.each([
  ["14 1/4 cwt", 14.25, " cwt"],
  ["14-1/4", 14.25, ""],
  ["3/8 in", 0.375, " in"],
  ["1 480 kg", 1480, " kg"],
  ["1'480.5", 1480.5, ""],
  ["1,480,000", 1_480_000, ""],
  ["1.480,5", 1480.5, ""],
  ["1e3", 1000, ""],
  ["-5 %", -5, " %"],
  ["minus 5", -5, ""],
  [".5", 0.5, ""],
])("%s begins with %f", (text, value, rest) => {
  expect(readNumber(text)).toMatchObject({ value, rest });
});

it("reads a comma as the decimal one where it can only be that, and says so", () => {
  const note = "comma read as the decimal point";
  expect(readNumber("1,5")).toMatchObject({ value: 1.5, note });
  expect(readNumber("0,480")).toMatchObject({ value: 0.48, note });
});

it("gives both readings of a comma before three digits", () => {
  expect(readNumber("1,480")).toMatchObject({ value: 1480, decimalComma: 1.48 });
});

it.each(["", "kg", "1,48,0", "14 9/4", "1/0", "1.2.3"])("%j begins with none that can be known", (text) => {
  expect(readNumber(text)).toBeUndefined();
});
