import { expect, it } from "vitest";
import { readNumber, unitInCell } from "../../../../sim/route/table/readNumber.ts";

it.each([
  ["12.5", 12.5],
  ["-.5", -0.5],
  ["\u22123", -3],
  ["1e3", 1000],
  ["13.4 m/s", 13.4],
  ["72km/h", 72],
  ["5.", 5],
])("reads %s", (text, value) => {
  expect(readNumber(text, ".")).toBe(value);
});

it.each(["", "abc", "1.2.3", "52.1 S", "12 apples", "1e999", "--1"])("takes %s for no number", (text) => {
  expect(readNumber(text, ".")).toBeNaN();
});

it("names the unit behind a number", () => {
  expect([unitInCell("13,4 m/s"), unitInCell("13.4"), unitInCell("52.1 S"), unitInCell("3 s")]).toEqual([
    "mps",
    "",
    "",
    "s",
  ]);
});

it("passes over ten million digits once", () => {
  // In a pattern that tries every split of them this does not end within the time of a test.
  expect(readNumber(`${"1".repeat(1e7)}x`, ".")).toBeNaN();
});
