import { expect, it } from "vitest";
import * as z from "zod";
import { across } from "../../../../shared/job/schema/across.ts";

let asked = 0;
const schema = z.strictObject({ low: z.number().max(10), high: z.number(), other: z.number().max(1) }).check(
  across(["low", "high"], ({ low, high }, fault) => {
    asked++;
    if (low > high) fault(["low"], `found ${low} above ${high}`);
  }),
);
const messages = (value: unknown) => schema.safeParse(value).error?.issues.map(({ message }) => message) ?? [];

it("says what two values contradict, though a third is wrong too", () => {
  expect(messages({ low: 3, high: 2, other: 1 })).toEqual(["found 3 above 2"]);
  expect(messages({ low: 3, high: 2, other: 5 })).toHaveLength(2);
});

it("asks nothing of values that are themselves wrong, or of what is no group", () => {
  asked = 0;
  expect(messages({ low: 30, high: 2, other: 1 })).toHaveLength(1);
  expect(messages({ high: 2, other: 1 })).toHaveLength(1);
  messages("text");
  expect(asked).toBe(0);
});
