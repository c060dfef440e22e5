import { expect, it } from "vitest";
import { writeFar } from "../../../../sim/route/log/writeFar.ts";

it("less than a metre is not written in tenths of a millimetre", () => {
  expect(writeFar(0.0659)).toBe("less than 1 m");
});

it.each([
  [6.44, "6.4 m"],
  [410.2, "410 m"],
  [12_345, "12.3 km"],
  [5_280_400, "5280 km"],
])("%d m are %s", (distance_m, words) => {
  expect(writeFar(distance_m)).toBe(words);
});
