import { describe, expect, it } from "vitest";
import { inkOn, ledgerFills, luminance, ramp } from "../../../../../web/charts/parts/figure/inks.ts";
import { ink, paper } from "../../../../../web/look/tokens.ts";

const contrast = (a: string, b: string) => {
  const [low, high] = [luminance(a), luminance(b)].sort((p, q) => p - q) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

describe("inks", () => {
  it("measure contrast as WCAG does: 21 between black and white, 4.54 for #767676 on white", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
  });

  it.each(Object.entries(ledgerFills))("numbers on %s read at 4.5 to 1 or better", (_, fill) => {
    expect(contrast(inkOn(fill, ink, paper), fill)).toBeGreaterThanOrEqual(4.5);
  });

  it("part neighbours of the ledger by gaps of paper, which every fill is darker than by a third, and fall from dark to light", () => {
    const fills = Object.values(ledgerFills);
    for (const fill of fills) expect(contrast(fill, paper)).toBeGreaterThan(1.33);
    const lightness = fills.map(luminance);
    expect(lightness).toEqual(lightness.toSorted((a, b) => a - b));
  });

  it("keep the order of the ramp in grey", () => {
    const lightness = ramp.map(luminance);
    expect(lightness).toEqual([...lightness].sort((a, b) => b - a));
  });
});
