import { expect, it } from "vitest";
import * as z from "zod";
import { above0, between, lengthMessage, line, risingAxis, sameLength } from "../../../../shared/job/schema/number.ts";

const isGood = (schema: z.ZodType, value: unknown) => schema.safeParse(value).success;

it("holds a number to both bounds, which are allowed themselves, nought only where it may be", () => {
  expect([-1, 0, 5, 10, 10.1].map((value) => isGood(between(0, 10), value))).toEqual([false, true, true, true, false]);
  expect([0, 1e-9, 10].map((value) => isGood(above0(10), value))).toEqual([false, true, true]);
  expect(isGood(between(0, 10), Number.NaN)).toBe(false);
});

it("holds an axis to rise, with the place where it does not", () => {
  const { error } = risingAxis(0, 100).safeParse([0, 5, 5]);
  expect(error?.issues).toMatchObject([{ path: [2], message: "found 5 after 5, values must rise" }]);
  expect(isGood(risingAxis(0, 100), [0, 5, 6])).toBe(true);
  expect(isGood(risingAxis(0, 100), [0])).toBe(false);
});

it("holds a list to the length of its axis", () => {
  const table = z.object({ x: z.array(z.number()), y: z.array(z.number()) }).check(sameLength("y", "x"));
  expect(table.safeParse({ x: [1, 2], y: [1] }).error?.issues[0].message).toBe(lengthMessage(1, 2, "x"));
  expect(lengthMessage(1, 2, "x")).toBe("found 1 value, 2 wanted: one for each of x");
  expect(isGood(table, { x: [1], y: [1] })).toBe(true);
});

it("takes a text of one line without blanks around it", () => {
  expect(line.parse(" a ")).toBe("a");
  expect([" ", "a".repeat(201)].map((text) => isGood(line, text))).toEqual([false, false]);
});
