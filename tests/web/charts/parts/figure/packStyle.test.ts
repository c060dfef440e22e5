import { describe, expect, it } from "vitest";
import { packStyle } from "../../../../../web/charts/parts/figure/packStyle.ts";

describe("packStyle", () => {
  it("tells twelve packs apart without colour, by dash and mark together", () => {
    const looks = Array.from({ length: 12 }, (_, i) => `${packStyle(i).dash} ${packStyle(i).symbol}`);
    expect(new Set(looks).size).toBe(12);
  });
  it("is the same for the same pack every time", () => {
    expect(packStyle(4)).toEqual(packStyle(4));
  });
});
