import { describe, expect, it } from "vitest";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { readQuantity } from "../../../shared/quantity.ts";

const read = (text: string, options = {}) => readQuantity("rate", text, options);

describe("a rate a year", () => {
  it.each([
    ["3", 0.03],
    ["3 %", 0.03],
    ["2.5 percent", 0.025],
    ["-1 %", -0.01],
    ["0.5", 0.005],
    ["0", 0],
    ["4 % a year", 0.04],
  ])("%s", (text, rate_frac) => {
    expect(read(text)).toMatchObject({ ok: true, value: rate_frac });
  });
  it("is refused beyond its bounds and in another unit, with what is allowed", () => {
    expect(read("60", { min: -0.2, max: 0.3 })).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining("60 % is not possible (-20 to 30 %)") },
    });
    expect(read("3 kg")).toMatchObject({ ok: false });
    expect(read("three")).toMatchObject({ ok: false });
  });
  it("is written in percent", () => {
    expect(writeQuantity("rate", 0.035, "british")).toBe("3.5 %");
  });
});
