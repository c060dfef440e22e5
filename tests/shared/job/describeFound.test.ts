import { expect, it } from "vitest";
import { describeFound } from "../../../shared/job/describeFound.ts";

it.each<[unknown, string]>([
  [undefined, "nothing"],
  [null, "an empty value"],
  [[1], "a list"],
  [{ a: 1 }, "a group of values"],
  ["heavy", '"heavy"'],
  [-5, "-5"],
  [Number.NaN, "NaN"],
  [true, "true"],
])("%j is %s", (value, words) => {
  expect(describeFound(value)).toBe(words);
});

it("cuts a long text", () => {
  expect(describeFound("a".repeat(41))).toBe(`"${"a".repeat(40)}…"`);
});
