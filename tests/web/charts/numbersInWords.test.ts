import { describe, expect, it } from "vitest";
import { textWidth_px, wrapped } from "../../../web/charts/parts/figure/textWidth.ts";
import { plainNumber, threeFigures } from "../../../web/charts/parts/figure/threeFigures.ts";

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

describe("wrapped", () => {
  it("breaks at spaces and loses no word that fits", () => {
    const lines = wrapped("Four modules, iron phosphate", 100, 13, 3);
    expect(lines.join(" ")).toBe("Four modules, iron phosphate");
    for (const line of lines) expect(textWidth_px(line, 13)).toBeLessThanOrEqual(100);
  });

  it("ends what does not fit in an ellipsis, and stays within the room", () => {
    const lines = wrapped("Unbreakablewordofgreatlength and more and more and more", 90, 13, 2);
    expect(lines.length).toBe(2);
    expect(lines.every((line) => textWidth_px(line, 13) <= 90)).toBe(true);
    expect(lines.at(-1)).toMatch(/…$/);
  });
});
