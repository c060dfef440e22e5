import { expect, it } from "vitest";
import { message, messageIn, quantity } from "../../../../shared/quantity/message.ts";
import { inSentence } from "../../../../sim/plan/layouts/inSentence.ts";

it("begins with a small letter, and leaves what does not begin with a word alone", () => {
  expect(messageIn(inSentence(message`The day ends ${quantity("distance", 3)} short.`), "metric")).toBe(
    "the day ends 3 km short.",
  );
  expect(inSentence([quantity("distance", 3)])).toEqual([quantity("distance", 3)]);
});
