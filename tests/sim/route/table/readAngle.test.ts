import { expect, it } from "vitest";
import { readAngle } from "../../../../sim/route/table/readAngle.ts";

const PLAIN_deg = 52 + 7 / 60 + 24.3 / 3600;

it.each([
  ["52.1234", 52.1234, false],
  ["52.1234 N", 52.1234, true],
  ["S 52.1234", -52.1234, true],
  ["-8.5", -8.5, true],
  ["\u2212 8.5", -8.5, true],
  ["52°07'24.3\"N", PLAIN_deg, true],
  ["N 52° 07.405'", 52 + 7.405 / 60, true],
  ["52:07:24.3", PLAIN_deg, false],
])("%s is an angle", (text, value_deg, isSigned) => {
  expect(readAngle(text, "degrees", ".", 90)).toEqual({ value_deg: expect.closeTo(value_deg, 9), isSigned });
});

it("may have degrees and minutes run together", () => {
  expect(readAngle("5207.405", "degreesMinutes", ".", 90)?.value_deg).toBeCloseTo(52 + 7.405 / 60, 9);
  expect(readAngle("5207,405", "degreesMinutes", ",", 90)?.value_deg).toBeCloseTo(52 + 7.405 / 60, 9);
});

it.each(["", "north", "91", "52°61'", "52°07'61\""])("%s is none", (text) => {
  expect(readAngle(text, "degrees", ".", 90)).toBeUndefined();
});

it("is none where the minutes run beyond sixty", () => {
  expect(readAngle("5267.4", "degreesMinutes", ".", 90)).toBeUndefined();
});
