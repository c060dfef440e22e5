import { expect, it } from "vitest";
import { writeFar } from "../../../../sim/route/log/writeFar.ts";
import { expectWrittenOnce } from "../../../support/writtenOnce.ts";

it("less than a metre is not written in tenths of a millimetre", () => {
  expect(writeFar(0.0659)).toBe("less than 1 m");
});

it.each([
  [6.44, "6.4 m"],
  [410.2, "410 m"],
  [9990, "9990 m"],
  [9999, "10 km"],
  [12_345, "12.3 km"],
  [5_280_400, "5280 km"],
])("%d m are %s", (distance_m, words) => {
  expect(writeFar(distance_m)).toBe(words);
});

it("no distance is written in two ways at the borders of its units", () => {
  expectWrittenOnce(
    writeFar,
    [1, 10, 100, 1000, 10_000, 100_000].map((each) => each * 1.031),
    { m: 1, km: 1000 },
  );
  expectWrittenOnce(writeFar, [10, 100, 1000, 10_000, 100_000], { m: 1, km: 1000 });
});
