import { expect, it } from "vitest";
import { isAllowed, isPlausible, likelyMeant } from "../../../../shared/quantity/reading/likelyMeant.ts";

it("is the same number in a unit that gets mistaken for this one", () => {
  // 35 psi for 35 bar: 35 x 0.0689476 bar.
  expect(likelyMeant("pressure", 35, "bar", {})).toEqual({ text: "35 psi", value: expect.closeTo(2.41317, 4) });
});

it("is the number with its point in another place", () => {
  expect(likelyMeant("finalDrive", 342, "", {})).toEqual({ text: "3.42", value: expect.closeTo(3.42, 12) });
});

it("is nothing where nothing is likelier than anything else", () => {
  expect(likelyMeant("finalDrive", 1e9, "", {})).toBeUndefined();
});

it("is within the field's bounds, and usual", () => {
  expect(isAllowed("mass", 500, { max: 400 })).toBe(false);
  expect(isAllowed("mass", 500, {})).toBe(true);
  expect(isAllowed("mass", Number.NaN, {})).toBe(false);
  // Nearly all masses lie between 5 and 4000 kg.
  expect([4, 5, 4000, 4001].map((value) => isPlausible("mass", value, {}))).toEqual([false, true, true, false]);
});
