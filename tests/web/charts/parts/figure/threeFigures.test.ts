import { describe, expect, it } from "vitest";
import { plainNumber, threeFigures } from "../../../../../web/charts/parts/figure/threeFigures.ts";

describe("threeFigures", () => {
  it.each([
    [0, "0"],
    [-0, "0"],
    [0.123456, "0.123"],
    [1.005, "1"],
    [12.345, "12.3"],
    [999.6, "1000"],
    [1234, "1230"],
    [-45.67, "−45.7"],
    [12_345, "12\u202f300"],
    [1e21, "1\u202f000\u202f000\u202f000\u202f000\u202f000\u202f000\u202f000"],
    [0.000012, "0.000012"],
    [1e-12, "0"],
    [Number.NaN, "unknown"],
    [Number.POSITIVE_INFINITY, "unknown"],
  ])("writes %f as %s", (value, expected) => {
    expect(threeFigures(value)).toBe(expected);
  });
});

describe("plainNumber", () => {
  it("writes ticks whole, without the dust of their making", () => {
    expect([0.1 + 0.2, 1250, -20, 100_000].map(plainNumber)).toEqual(["0.3", "1250", "−20", "100\u202f000"]);
  });
});
