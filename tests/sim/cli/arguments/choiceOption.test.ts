import { expect, it } from "vitest";
import { choiceOption } from "../../../../sim/cli/arguments/choiceOption.ts";

const given = (day?: string) =>
  choiceOption({ positionals: [], values: day === undefined ? {} : { day } }, "day", ["usual", "longest"]);

it("is one of the words, or nothing where none was given", () => {
  expect(given("longest")).toBe("longest");
  expect(given()).toBeUndefined();
});

it("refuses another word and says which there are", () => {
  expect(() => given("sunday")).toThrow('--day: found "sunday", one of usual, longest is wanted');
});
