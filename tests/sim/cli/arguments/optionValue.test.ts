import { expect, it } from "vitest";
import { hasOption, numberOption, numberWithin, textOption } from "../../../../sim/cli/arguments/optionValue.ts";

const args = { positionals: [], values: { step: "0.5", json: true } };
const bounds = { low: 0.01, high: 60, unit: "s" };

it("gives what was given, and nothing for what was not", () => {
  expect(textOption(args, "step")).toBe("0.5");
  expect(numberOption(args, "step", bounds)).toBe(0.5);
  expect(hasOption(args, "json")).toBe(true);
  expect(textOption(args, "out")).toBeUndefined();
  expect(numberOption(args, "out", bounds)).toBeUndefined();
  expect(hasOption(args, "keep")).toBe(false);
});

it.each(["0.01", "60", "1e1", "+2", ".5"])("takes %s, the bounds included", (text) => {
  expect(numberWithin(text, "--step", bounds)).toBe(Number(text));
});

it("takes the unit that is wanted behind the number", () => {
  expect(numberWithin("0.5 s", "--step", bounds)).toBe(0.5);
});

it.each(["0", "61", "-1", "", "half", "0x10", "NaN", "Infinity", "1,5", "5 km", "5s s"])("refuses %j", (text) => {
  expect(() => numberWithin(text, "--step", bounds)).toThrow(
    `--step: found "${text}", a number from 0.01 to 60 s is wanted`,
  );
});

it("refuses part of a whole", () => {
  expect(() => numberWithin("80.5", "--port", { low: 1, high: 65_535, unit: "as a port", isWhole: true })).toThrow(
    "a whole number from 1 to 65535 as a port is wanted",
  );
});
