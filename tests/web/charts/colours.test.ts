import { describe, expect, it } from "vitest";
import { inkOn, ledgerFills, luminance, ramp } from "../../../web/charts/parts/figure/inks.ts";
import { packStyle } from "../../../web/charts/parts/figure/packStyle.ts";
import { steppedRamp } from "../../../web/charts/parts/keys/steppedRamp.ts";
import { ink, paper } from "../../../web/look/tokens.ts";

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

describe("packStyle", () => {
  it("tells twelve packs apart without colour, by dash and mark together", () => {
    const looks = Array.from({ length: 12 }, (_, i) => `${packStyle(i).dash} ${packStyle(i).symbol}`);
    expect(new Set(looks).size).toBe(12);
  });
  it("is the same for the same pack every time", () => {
    expect(packStyle(4)).toEqual(packStyle(4));
  });
});

describe("steppedRamp", () => {
  it("holds every value in its own step, darker for more", () => {
    const { steps, colourOf } = steppedRamp(-3, 47);
    expect(steps.length).toBeLessThanOrEqual(ramp.length);
    expect(steps[0]?.from).toBeLessThanOrEqual(-3);
    expect(steps.at(-1)?.to).toBeGreaterThanOrEqual(47);
    for (const step of steps) expect(colourOf((step.from + step.to) / 2)).toBe(step.colour);
    const lightness = steps.map((step) => luminance(step.colour));
    expect(lightness).toEqual([...lightness].sort((a, b) => b - a));
    expect(new Set(steps.map((step) => step.colour)).size).toBe(steps.length);
  });
  it("is one step where all values are the same", () => {
    expect(steppedRamp(5, 5).steps.map((step) => step.words)).toEqual(["5"]);
  });
});
