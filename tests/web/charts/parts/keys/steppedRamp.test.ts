import { describe, expect, it } from "vitest";
import { luminance, ramp } from "../../../../../web/charts/parts/figure/inks.ts";
import { steppedRamp } from "../../../../../web/charts/parts/keys/steppedRamp.ts";

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
