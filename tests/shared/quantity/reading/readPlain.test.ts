import { expect, it } from "vitest";
import { readPlain, unknownUnit, unreadable } from "../../../../shared/quantity/reading/readPlain.ts";
import { refusal, understood, written } from "./written.ts";

const value = (...given: Parameters<typeof written>) => understood(readPlain(written(...given))).value;

it("reads a number with its unit, and several that add up", () => {
  expect(value("length", "12 in")).toBeCloseTo(304.8, 9);
  // 3 x 304.8 + 6 x 25.4 mm.
  expect(value("length", "3 ft 6 in")).toBeCloseTo(1066.8, 9);
});

it("reads plus or minus, in the unit or as a share", () => {
  expect(understood(readPlain(written("mass", "1480 ± 10 kg")))).toMatchObject({ value: 1480, plusMinus: 10 });
  expect(understood(readPlain(written("mass", "1480 kg ± 2 %"))).plusMinus).toBeCloseTo(29.6, 9);
});

it("refuses words, and units of another kind, by name", () => {
  expect(refusal(readPlain(written("mass", "heavy"))).problem.code).toBe("quantity-unreadable");
  expect(refusal(readPlain(written("mass", "20 mph"))).problem.message).toContain("mph");
  expect(refusal(unreadable(written("mass", "x"))).ok).toBe(false);
  expect(refusal(unknownUnit(written("mass", "5 q"), "q")).problem.message).toContain("q");
});
