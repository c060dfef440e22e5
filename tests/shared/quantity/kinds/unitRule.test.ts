import { expect, it } from "vitest";
import { applyUnit, scaled, unapplyUnit } from "../../../../shared/quantity/kinds/unitRule.ts";

// Fahrenheit: (F − 32) 5/9; miles a gallon are litres to 100 km by a divisor.
const fahrenheit = { shift: -32, factor: 5 / 9 };

it("makes a number one in the kind's own unit: by a factor, a shift, or as a divisor", () => {
  expect(applyUnit(25.4, 2)).toBe(50.8);
  expect(applyUnit(fahrenheit, 212)).toBeCloseTo(100, 12);
  expect(applyUnit({ over: 282.5 }, 50)).toBe(5.65);
});

it.each([0.001, fahrenheit, { over: 235 }])("goes back where it came from by %j", (rule) => {
  for (const number of [-40, 1, 72]) expect(unapplyUnit(rule, applyUnit(rule, number))).toBeCloseTo(number, 9);
});

it("has the same spellings for a kind whose own unit is another size", () => {
  expect(scaled({ m: 1, mm: 0.001 }, 0.001)).toEqual({ m: 1000, mm: 1 });
});
