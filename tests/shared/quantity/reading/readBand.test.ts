import { expect, it } from "vitest";
import { readBand } from "../../../../shared/quantity/reading/readBand.ts";
import { readPlain } from "../../../../shared/quantity/reading/readPlain.ts";
import { understood, written } from "./written.ts";

const band = (...given: Parameters<typeof written>) => readBand(written(...given), readPlain);

it.each(["0.50 to 0.65", "0.50-0.65", "between 0.50 and 0.65", "from 0.50 to 0.65", "0.50 .. 0.65"])(
  "%s is its middle, give or take half of it",
  (text) => {
    const { value, plusMinus = 0 } = understood(band("coefficient", text));
    expect(value).toBeCloseTo(0.575, 12);
    expect(plusMinus).toBeCloseTo(0.075, 12);
  },
);

it("gives a bare end the unit of the other", () => {
  const { value, plusMinus } = understood(band("speed", "60-65 mph"));
  expect(value).toBeCloseTo(62.5 * 1.609344, 9);
  expect(plusMinus).toBeCloseTo(2.5 * 1.609344, 9);
});

it("is none of a difference, of things that are counted, or of one number", () => {
  expect(band("mass", "953 - 150")).toBeUndefined();
  expect(band("count", "3 to 5")).toBeUndefined();
  expect(band("mass", "953")).toBeUndefined();
});
