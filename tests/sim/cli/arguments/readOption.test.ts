import { expect, it } from "vitest";
import { quantityOf, quantityOption } from "../../../../sim/cli/arguments/readOption.ts";

it("reads a quantity as a workshop writes it", () => {
  const args = { positionals: [], values: { hill: "1 in 6" } };
  expect(quantityOption(args, "hill", "gradient")).toBeCloseTo(1 / 6, 12);
  expect(quantityOption(args, "top", "speed")).toBeUndefined();
  // A mile is 1.609344 km.
  expect(quantityOf("70 mph", "--top", "speed")).toBeCloseTo(112.65408, 9);
});

it("refuses what is no quantity, unknown or out of bounds, with the option's name", () => {
  expect(() => quantityOf("fast", "--top", "speed")).toThrow(/^--top: /);
  expect(() => quantityOf("?", "--top", "speed")).toThrow('--top: found "?", a value is wanted here');
  expect(() => quantityOf("90 km/h", "--top", "speed", { max: 80 })).toThrow(/^--top: /);
});
