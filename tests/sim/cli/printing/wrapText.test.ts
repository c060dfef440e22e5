import { expect, it } from "vitest";
import { wrapText } from "../../../../sim/cli/printing/wrapText.ts";

it("breaks between words at 80 letters, later lines below the first word", () => {
  const lines = wrapText("word ".repeat(40).trim(), "! ").split("\n");
  expect(lines.map((line) => line.length)).toEqual([76, 76, 51]);
  expect(lines.map((line) => line.slice(0, 3))).toEqual(["! w", "  w", "  w"]);
});

it("keeps a number with its unit, and loses no word", () => {
  const text = `${"a".repeat(73)} of 12.5 km/h at 4 % and 3 more`;
  const wrapped = wrapText(text);
  expect(wrapped.split("\n")).toEqual([`${"a".repeat(73)} of`, "12.5 km/h at 4 % and 3 more"]);
  expect(wrapped.replace(/\n/g, " ")).toBe(text);
});

it("leaves a word longer than a line as it is", () => {
  expect(wrapText(`see ${"x".repeat(100)} there`)).toBe(`see\n${"x".repeat(100)}\nthere`);
});
